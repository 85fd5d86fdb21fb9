package lint

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/onfile"
	"liftlint/internal/policy"
)

const (
	inputMissing   = "input/missing"
	inputNotJudged = "input/not_judged"
)

// waiting is what waits for one input, or stands still for one reason.
type waiting struct {
	input  facts.Input
	reason facts.Reason
	at     string           // place of the first subject, for a reason
	worst  finding.Severity // the worst that a waiting rule could have found
	asked  bool             // a waiting rule asks for its inputs at this stage
	rules  []string         // ids, one for each subject
}

// addMissing makes one finding of each input that checks wait for, and one of
// each reason for which they stand still that no other finding may tell. It gives
// back those that one may.
func (r *Result) addMissing(verdicts []policy.Verdict) (told []*waiting) {
	inputs, reasons := r.gather(verdicts)
	for _, w := range inputs {
		r.addInput(w)
	}
	for _, w := range reasons {
		if w.reason.ToldOf != "" {
			told = append(told, w)
			continue
		}
		r.addReason(w)
	}
	return told
}

func (r *Result) addReason(w *waiting) *finding.Finding {
	f := r.addBuiltin(inputNotJudged, fmt.Sprintf("%s: %s", w.reason.Text, w.count()), w.reason.Text, r.locate(w.at), nil)
	f.Severity = w.severity()
	return f
}

// gather groups what could not be judged, in the order of rules and subjects.
func (r *Result) gather(verdicts []policy.Verdict) (inputs, reasons []*waiting) {
	byInput, byReason := map[facts.Input]*waiting{}, map[facts.Reason]*waiting{}
	for _, v := range verdicts {
		for _, o := range v.Outcomes {
			if r.planMayGive(v.Rule, o) {
				continue
			}
			gap := r.gapOf(o)
			for _, in := range gap.Inputs {
				if byInput[in] == nil {
					byInput[in] = &waiting{input: in}
					inputs = append(inputs, byInput[in])
				}
				byInput[in].add(v.Rule, r.Stage)
			}
			for _, why := range gap.Reasons {
				if byReason[why] == nil {
					byReason[why] = &waiting{reason: why, at: o.Subject.At}
					reasons = append(reasons, byReason[why])
				}
				byReason[why].add(v.Rule, r.Stage)
			}
		}
	}
	return inputs, reasons
}

// gapOf is all that one check of one subject waits for, each once.
func (r *Result) gapOf(o policy.Outcome) facts.Gap {
	all := facts.Gaps{}
	for _, field := range o.Missing {
		gap := r.gap(o.Subject, field)
		all.Add(o.Subject.Key, "", gap.Inputs...)
		all.Explain(o.Subject.Key, "", gap.Reasons...)
	}
	return all[facts.GapKey{Key: o.Subject.Key}]
}

// planMayGive reports, of gear by itself, what a plan that uses it may give: all but
// the history of the item. A register need not have it: here the account of the rule
// tells that it is open, and a plan is asked for it.
func (r *Result) planMayGive(rule *policy.Rule, o policy.Outcome) bool {
	if !r.alone || rule.Over != "gear" && rule.Over != "ropes" {
		return false
	}
	return !slices.ContainsFunc(o.Missing, func(field string) bool { return strings.HasPrefix(field, "inspection") })
}

func (w *waiting) add(rule *policy.Rule, stage string) {
	w.rules = append(w.rules, rule.ID)
	worst := rule.Worst(stage)
	if w.worst == "" || worst.AtLeast(w.worst) {
		w.worst = worst
	}
	w.asked = w.asked || rule.AsksFrom(stage)
}

// severity is as bad as the worst that could have been found, once the stage
// asks for the input; before, a note.
func (w *waiting) severity() finding.Severity {
	if !w.asked {
		return finding.Note
	}
	return w.worst
}

func (w *waiting) count() string {
	n := len(w.rules)
	rules := slices.Compact(slices.Sorted(slices.Values(w.rules)))
	if n == 1 {
		return "1 check waits (" + rules[0] + ")"
	}
	return fmt.Sprintf("%d checks wait (%s)", n, some(rules))
}

// mostNamed is how many rules are named; the account of each rule tells of all.
const mostNamed = 3

// some names the first rules and counts the rest.
func some(rules []string) string {
	if len(rules) <= mostNamed+1 {
		return strings.Join(rules, ", ")
	}
	return fmt.Sprintf("%s and %d other rules", strings.Join(rules[:mostNamed], ", "), len(rules)-mostNamed)
}

func (r *Result) addInput(w *waiting) {
	message := fmt.Sprintf("give %s, `%s`: %s", w.input.Label, w.input.Field, w.count())
	key, related := "input"+strings.TrimPrefix(w.input.At, "#"), []finding.Related(nil)
	if e, rest, ok := r.onFile.Of(strings.TrimPrefix(w.input.At, "#")); ok {
		key = "input/gear/" + e.ID + rest
		if e.Use != "" {
			related = r.related([]facts.Related{onfile.UseOf(e)})
		}
	}
	r.addBuiltin(inputMissing, message, key+"/"+w.input.Field, r.locate(w.input.At), related).Severity = w.severity()
}

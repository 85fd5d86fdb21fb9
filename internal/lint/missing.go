package lint

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

const (
	inputMissing   = "input/missing"
	inputNotJudged = "input/not_judged"
)

// waiting is what waits for one input, or stands still for one reason.
type waiting struct {
	input  facts.Input
	reason string
	at     string           // place of the first subject, for a reason
	worst  finding.Severity // the worst that a waiting rule could have found
	asked  bool             // a waiting rule asks for its inputs at this stage
	rules  []string         // ids, one for each subject
}

// addMissing makes one finding of each input that checks wait for.
func (r *Result) addMissing(verdicts []policy.Verdict) {
	inputs, reasons := r.gather(verdicts)
	failed := finding.Worst(r.Findings) == finding.Error
	for _, w := range inputs {
		r.addInput(w)
		failed = failed || r.Findings[len(r.Findings)-1].Severity == finding.Error
	}
	if failed {
		return // what stands still for a reason has an error that says so
	}
	for _, w := range reasons {
		r.addBuiltin(inputNotJudged, fmt.Sprintf("%s: %s", w.reason, w.count()), w.reason, r.locate(w.at), nil)
		r.Findings[len(r.Findings)-1].Severity = w.severity()
	}
}

func (r *Result) gather(verdicts []policy.Verdict) (inputs, reasons []*waiting) {
	byInput, byReason := map[facts.Input]*waiting{}, map[string]*waiting{}
	for _, v := range verdicts {
		for _, o := range v.Outcomes {
			for _, field := range o.Missing {
				gap := r.gap(o.Subject.Key, field)
				for _, in := range gap.Inputs {
					w, ok := byInput[in]
					if !ok {
						w = &waiting{input: in}
						byInput[in] = w
						inputs = append(inputs, w)
					}
					w.add(v.Rule, r.Stage)
				}
				for _, why := range gap.Reasons {
					w, ok := byReason[why]
					if !ok {
						w = &waiting{reason: why, at: o.Subject.At}
						byReason[why] = w
						reasons = append(reasons, w)
					}
					w.add(v.Rule, r.Stage)
				}
			}
		}
	}
	return inputs, reasons
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
	rules := slices.Compact(slices.SortedFunc(slices.Values(w.rules), cmp.Compare[string]))
	if n == 1 {
		return "1 check waits (" + rules[0] + ")"
	}
	return fmt.Sprintf("%d checks wait (%s)", n, strings.Join(rules, ", "))
}

func (r *Result) addInput(w *waiting) {
	message := fmt.Sprintf("give %s, `%s`: %s", w.input.Label, w.input.Field, w.count())
	r.addBuiltin(inputMissing, message, "input"+strings.TrimPrefix(w.input.At, "#")+"/"+w.input.Field, r.locate(w.input.At), nil)
	r.Findings[len(r.Findings)-1].Severity = w.severity()
}

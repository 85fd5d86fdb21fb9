package text

import (
	"cmp"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// inputMissing is the check whose findings are listed together: a draft may
// have dozens, and they are worked through as one list.
const inputMissing = "input/missing"

// kind is what the findings of a group have in common, and say only once.
type kind struct {
	severity                    finding.Severity
	rule, grade, title, sources string
}

// findings prints all findings of a plan, those of one kind together.
func (p *printer) findings(r *lint.Result) {
	for _, g := range grouped(r.Findings) {
		if g[0].Rule == inputMissing && len(g) > 1 {
			p.inputs(g)
		} else {
			p.group(r, g)
		}
	}
}

// grouped puts findings of one kind and severity together: the worst first, then
// by the place of the first of each, with what is still to be given at the end
// of its severity.
func grouped(list []finding.Finding) [][]finding.Finding {
	var groups [][]finding.Finding
	at := map[kind]int{}
	for _, f := range list {
		k := kind{f.Severity, f.Rule, f.Grade, f.Title, sourcesOf(f.Citations)}
		i, ok := at[k]
		if !ok {
			i = len(groups)
			at[k], groups = i, append(groups, nil)
		}
		groups[i] = append(groups[i], f)
	}
	slices.SortStableFunc(groups, func(a, b []finding.Finding) int {
		return cmp.Or(b[0].Severity.Rank()-a[0].Severity.Rank(), waits(a[0])-waits(b[0]))
	})
	return groups
}

func waits(f finding.Finding) int {
	if f.Rule == inputMissing {
		return 1
	}
	return 0
}

// group prints the first finding of a group in full, and of the others what they
// have of their own.
func (p *printer) group(r *lint.Result, g []finding.Finding) {
	p.finding(r, g)
	for _, f := range g[1:] {
		p.also(r, f, g[0])
	}
	p.blank()
}

// also prints a finding that is like the first of its group.
func (p *printer) also(r *lint.Result, f, first finding.Finding) {
	p.emit(segment{plain, "  "}, segment{bold, pad("also", labelColumn)}, segment{plain, place(f.Place)})
	rest := strings.Repeat(" ", labelColumn+2)
	p.hanging(rest, "", plain, sentence(f.Message), rest)
	p.figures(f)
	switch {
	case f.Remedy == first.Remedy:
	case f.Remedy == "":
		p.labeled("put it right", "nothing is offered for this one")
	default:
		p.labeled("put it right", f.Remedy)
	}
	if r.State == lint.Judged {
		return // the places that had a part are like those of the first
	}
	for _, x := range f.Related {
		p.labeled("see also", place(x.Place)+", "+x.Caption)
	}
}

// keysOf lists the subjects of a group, each once.
func keysOf(g []finding.Finding) string {
	var keys []string
	for _, f := range g {
		if f.Key != "" && !slices.Contains(keys, f.Key) {
			keys = append(keys, f.Key)
		}
	}
	return strings.Join(keys, ", ")
}

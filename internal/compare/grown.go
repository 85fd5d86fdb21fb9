package compare

import (
	"fmt"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// grow marks the findings that are set aside only because the baseline has grown since
// the revision before: that takes back nothing of their being new or worse.
func (p *Plan) grow(a, b *lint.Result) {
	file, entries := b.Grown(a)
	if len(entries) == 0 {
		return
	}
	p.Grown = &Grown{File: file, Findings: len(entries)}
	taken := map[[2]string]bool{}
	for _, k := range entries {
		taken[[2]string{k.Rule, k.Key}] = true
	}
	known := map[[2]string]bool{}
	for _, f := range b.Findings {
		if f.Aside != nil && f.Aside.Means == finding.ByBaseline {
			known[[2]string{f.Rule, f.Key}] = true
		}
	}
	for i, f := range p.Findings {
		if f.New != nil && known[[2]string{f.Rule, f.Key}] && taken[[2]string{f.Rule, b.Stable(f.Key)}] {
			p.Findings[i].Grown = true
		}
	}
}

// grownWords say what a baseline has taken in.
func grownWords(g *Grown) string {
	if g == nil {
		return ""
	}
	return fmt.Sprintf(" Set aside by %s, which this change grew by %s.", g.File, report.Plural(g.Findings, "finding"))
}

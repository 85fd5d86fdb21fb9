package markdown

import (
	"fmt"
	"sort"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// detail is how much is told.
type detail struct {
	findings int  // of each plan; in short, kinds of findings
	plans    int  // the worst of all
	form     form // in which each plan is shown
	longer   int  // how many of the worst plans are shown less briefly than in short
}

// form is how much there is of a plan besides which findings.
type form int

const (
	whole     form = iota
	noFigures      // how it hangs is left out
	inShort        // so is how to put it right, and findings of a kind stand in one line
)

// fewFindings is from where on phases are left out as well.
const fewFindings = 10

const all = int(^uint(0) >> 1)

// fewest is how many kinds of findings are told of each plan where not all plans are.
const fewest = 3

// fitting writes as much as fits. The verdict and the caution are always there.
// Findings go before figures: these stay only where all errors are told too.
func fitting(run report.Run, most int) string {
	text := write(run, detail{findings: all, plans: all})
	if most == 0 || len(text) <= most {
		return text
	}
	fits := func(d detail) bool { return len(write(run, d)) <= most }
	for _, f := range []form{whole, noFigures, inShort} {
		n := largest(mostFindings(run), func(n int) bool { return fits(detail{findings: n, plans: all, form: f}) })
		if n > 0 && n >= mostErrors(run) && f != inShort {
			return write(run, detail{findings: n, plans: all, form: f})
		}
		if n > 0 && f == inShort {
			k := largest(len(run.Results), func(k int) bool { return fits(detail{n, all, inShort, k}) })
			return write(run, detail{n, all, inShort, k})
		}
	}
	n := largest(len(run.Results), func(n int) bool { return fits(detail{fewest, n, inShort, 0}) })
	return write(run, detail{fewest, n, inShort, 0})
}

// largest is the largest number up to one that still does; 0 where none does. What
// does for a number does for all below.
func largest(most int, does func(int) bool) int {
	return sort.Search(most, func(n int) bool { return !does(n + 1) })
}

func mostFindings(run report.Run) int {
	most := 0
	for _, r := range run.Results {
		if r != nil {
			most = max(most, len(r.Findings))
		}
	}
	return most
}

func mostErrors(run report.Run) int {
	most := 0
	for _, r := range run.Results {
		if r != nil {
			most = max(most, report.CountOf(r).Errors)
		}
	}
	return most
}

// detailOf is how much is told of one plan. Those that are shown longer have all
// findings.
func (p *page) detailOf(n int) detail {
	if p.longer[n] {
		return detail{findings: all, form: noFigures}
	}
	return p.detail
}

// told are the findings of a plan that are shown, and those that are not.
func (d detail) told(r *lint.Result) (shown, left []finding.Finding) {
	n := d.findings
	for _, g := range report.Grouped(r.Findings) {
		k := min(max(n, 0), len(g))
		if d.form == inShort && n > 0 {
			k = len(g)
			n--
		} else if d.form != inShort {
			n -= k
		}
		shown, left = append(shown, g[:k]...), append(left, g[k:]...)
	}
	return shown, left
}

// cut says ahead of all what there was no room for.
func (p *page) cut(run report.Run) {
	plans := worst(run, p.detail.plans)
	shown := setOf(plans)
	var left []finding.Finding
	total := 0
	for i, r := range run.Results {
		if r == nil {
			continue
		}
		total += len(r.Findings)
		if !shown[i] {
			left = append(left, r.Findings...)
			continue
		}
		_, rest := p.detailOf(i).told(r)
		left = append(left, rest...)
	}
	var parts []string
	if n := len(run.Results) - len(plans); n > 0 {
		parts = append(parts, fmt.Sprintf("%d of %s", n, report.Plural(len(run.Results), "plan")))
	}
	if len(left) > 0 {
		parts = append(parts, fmt.Sprintf("%d of %s (%s)", len(left), report.Plural(total, "finding"), bySeverity(left)))
	}
	switch p.detail.form {
	case noFigures:
		parts = append(parts, "the figures of the lifts")
	case inShort:
		parts = append(parts, "the figures of the lifts")
		if p.detail.longer < len(plans) {
			parts = append(parts, "how to put findings right")
		}
	}
	if len(parts) > 0 {
		p.paragraph("**Cut for want of room.** Not shown: " + strings.Join(parts, ", ") + ". The counts take all in, and the JSON report has all.")
	}
}

func setOf(list []int) map[int]bool {
	set := map[int]bool{}
	for _, i := range list {
		set[i] = true
	}
	return set
}

// bySeverity counts findings; what is set aside is apart.
func bySeverity(list []finding.Finding) string {
	return strings.TrimSuffix(report.Found(report.CountOf(&lint.Result{State: lint.Judged, Findings: list})), ".")
}

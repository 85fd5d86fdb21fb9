package report

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
)

// Sums count rules. All but those that are both broken and not judged stand in
// one sum only.
type Sums struct {
	Rules, Broken, NotJudged int
	Both                     int // broken and not judged
	Met, Partly              int // by all subjects; by some, the others broken or not judged
	Silent, Idle             int // judged nothing without saying why; do not apply
}

// SumUp counts the rules of one plan.
func SumUp(list []lint.Checked) Sums {
	s := Sums{Rules: len(list)}
	for _, c := range list {
		broken, notJudged := len(c.Broken) > 0, len(c.NotJudged) > 0
		if broken {
			s.Broken++
		}
		if notJudged {
			s.NotJudged++
		}
		if broken && notJudged {
			s.Both++
		}
		switch {
		case broken || notJudged:
			if len(c.Met) > 0 {
				s.Partly++
			}
		case len(c.Met) > 0:
			s.Met++
		case c.DoesNotApply == "":
			s.Silent++
		default:
			s.Idle++
		}
	}
	return s
}

// Words tells the sums. That a rule is not judged is told though it is broken
// too, and only what every subject meets is called met.
func (s Sums) Words() string {
	notJudged := fmt.Sprintf("%d not judged", s.NotJudged)
	if s.Both > 0 {
		notJudged += fmt.Sprintf(" (%d of them broken too)", s.Both)
	}
	parts := []string{fmt.Sprintf("%d broken", s.Broken), notJudged, fmt.Sprintf("%d met", s.Met)}
	if s.Silent > 0 {
		parts = append(parts, fmt.Sprintf("%d did nothing", s.Silent))
	}
	parts = append(parts, fmt.Sprintf("%d not applicable", s.Idle))
	return Plural(s.Rules, "rule") + ": " + strings.Join(parts, ", ") + "."
}

// Subjects is the number of records that a rule was put to.
func Subjects(c lint.Checked) int { return len(c.Broken) + len(c.NotJudged) + len(c.Met) }

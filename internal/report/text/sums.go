package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
)

// sums count rules. All but those that are both broken and not judged stand in
// one sum only.
type sums struct{ rules, broken, notJudged, both, met, partly, silent, idle int }

func sumUp(list []lint.Checked) sums {
	s := sums{rules: len(list)}
	for _, c := range list {
		broken, notJudged := len(c.Broken) > 0, len(c.NotJudged) > 0
		if broken {
			s.broken++
		}
		if notJudged {
			s.notJudged++
		}
		if broken && notJudged {
			s.both++
		}
		switch {
		case broken || notJudged:
			if len(c.Met) > 0 {
				s.partly++
			}
		case len(c.Met) > 0:
			s.met++
		case c.DoesNotApply == "":
			s.silent++
		default:
			s.idle++
		}
	}
	return s
}

// words tells the sums. That a rule is not judged is told though it is broken
// too, and only what every subject meets is called met.
func (s sums) words() string {
	notJudged := fmt.Sprintf("%d not judged", s.notJudged)
	if s.both > 0 {
		notJudged += fmt.Sprintf(" (%d of them broken too)", s.both)
	}
	parts := []string{fmt.Sprintf("%d broken", s.broken), notJudged, fmt.Sprintf("%d met", s.met)}
	if s.silent > 0 {
		parts = append(parts, fmt.Sprintf("%d did nothing", s.silent))
	}
	parts = append(parts, fmt.Sprintf("%d not applicable", s.idle))
	return count(s.rules, "rule") + ": " + strings.Join(parts, ", ") + "."
}

package text

import (
	"fmt"

	"liftlint/internal/finding"
	"liftlint/internal/report"
)

// inputs prints several missing inputs of one severity as one list.
func (p *printer) inputs(list []finding.Finding) {
	word, s := severity(list[0].Severity)
	p.item("", word+"  ", s, fmt.Sprintf("%s: %d inputs", list[0].Title, len(list)))
	last := ""
	for _, f := range list {
		if at := report.Place(f.Place); at != last {
			p.emit(segment{plain, "  " + at})
			last = at
		}
		p.hanging("    ", "", plain, report.Sentence(report.WithoutRules(f.Message)), "      ")
	}
	p.labeled("source", report.Sources(list[0].Citations))
	p.labeled("rule", list[0].Rule)
	p.blank()
}

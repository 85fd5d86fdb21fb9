package text

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
)

// inputs prints several missing inputs of one severity as one list.
func (p *printer) inputs(list []finding.Finding) {
	word, s := severity(list[0].Severity)
	p.item("", word+"  ", s, fmt.Sprintf("%s: %d inputs", list[0].Title, len(list)))
	last := ""
	for _, f := range list {
		if at := place(f.Place); at != last {
			p.emit(segment{plain, "  " + at})
			last = at
		}
		p.hanging("    ", "", plain, sentence(withoutRules(f.Message)), "      ")
	}
	p.labeled("source", sourcesOf(list[0].Citations))
	p.labeled("rule", list[0].Rule)
	p.blank()
}

// withoutRules leaves out the names of the checks that wait, which the account
// of all checks has again.
func withoutRules(message string) string {
	if cut := strings.LastIndex(message, " ("); cut >= 0 && strings.HasSuffix(message, ")") {
		return message[:cut]
	}
	return message
}

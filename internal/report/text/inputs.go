package text

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// inputMissing is the check whose findings are listed together: a draft may
// have dozens, and they are worked through as one list.
const inputMissing = "input/missing"

// findings prints all findings of a plan: those about the lift in the order of
// the file, then what is still to be given, the worst first.
func (p *printer) findings(r *lint.Result) {
	missing := map[finding.Severity][]finding.Finding{}
	for _, f := range r.Findings {
		_, err := finding.ParseSeverity(string(f.Severity))
		if f.Rule == inputMissing && err == nil {
			missing[f.Severity] = append(missing[f.Severity], f)
			continue
		}
		p.finding(r, f)
	}
	for _, s := range finding.Severities() {
		switch list := missing[s]; len(list) {
		case 0:
		case 1:
			p.finding(r, list[0])
		default:
			p.inputs(list)
		}
	}
}

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
	p.sources(list[0].Citations)
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

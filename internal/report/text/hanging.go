package text

import (
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// howItHangs shows the decisive figures: how the load hangs and what each leg
// carries, so that a plan without findings can be reviewed too.
func (p *printer) howItHangs(r *lint.Result) {
	h, ok := report.HangingOf(r)
	if !ok {
		return
	}
	p.item("", "How it hangs: ", bold, strings.Join(h.Words, "; ")+".")
	p.columns(h.Legs)
	if h.AboveLegs != "" {
		p.item("", "  Above the legs: ", plain, h.AboveLegs+".")
	}
	if h.InsideBeams != "" {
		p.item("", "  In the beams: ", plain, h.InsideBeams+".")
	}
	if len(h.Phases) > 0 {
		p.blank()
		p.columns(h.Phases)
	}
	p.blank()
}

// columns prints rows of cells, two spaces apart.
func (p *printer) columns(rows [][]string) {
	var widths []int
	for _, row := range rows {
		for i, c := range row {
			if i == len(widths) {
				widths = append(widths, 0)
			}
			widths[i] = max(widths[i], width(c))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		for i, c := range row {
			b.WriteString(pad(c, widths[i]) + "  ")
		}
		p.emit(segment{plain, "  " + b.String()})
	}
}

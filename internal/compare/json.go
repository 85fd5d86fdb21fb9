package compare

import (
	"io"
	"reflect"
	"slices"

	"liftlint/internal/record"
	"liftlint/internal/report"
)

// WriteJSON writes the comparison for programs.
func WriteJSON(w io.Writer, c Comparison) error {
	c.Failures = orNone(c.Failures)
	c.Plans = slices.Clone(orNone(c.Plans))
	for i, p := range c.Plans {
		p.Judged, p.Figures, p.Gear = orNone(p.Judged), orNone(p.Figures), slices.Clone(orNone(p.Gear))
		p.Written, p.Findings, p.Unjudged = orNone(p.Written), orNone(p.Findings), orNone(p.Unjudged)
		p.Unjudged = slices.Clone(p.Unjudged)
		for j := range p.Unjudged {
			p.Unjudged[j].Why = orNone(p.Unjudged[j].Why)
		}
		for j := range p.Gear {
			p.Gear[j].Fields = orNone(p.Gear[j].Fields)
		}
		c.Plans[i] = p
	}
	return report.WriteJSON(w, c)
}

// orNone is an empty list instead of null.
func orNone[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}

// Schema is the published JSON Schema of the comparison.
func Schema() map[string]any {
	return record.Schema(reflect.TypeFor[Comparison](), "liftlint compare",
		"What changed between two revisions of lift plans: in figures, in gear, in what else is written, and in findings.")
}

package plan

import (
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// Decode reads a plan from a document that has passed its schemas. Faults are
// ids given twice, references that lead nowhere and items that can't work where
// they stand, in the order of the file; with any of them the plan is nil. The
// error says that the schemas let something through that can't be
// read, which is a fault of the tool.
func Decode(doc *yamldoc.Document) (*Plan, []yamldoc.Fault, error) {
	var err error
	root := fields{doc.Root(), &err}
	p := &Plan{
		Lift:   decodeLift(root.of("lift")),
		Load:   decodeLoad(root.of("load")),
		Hooks:  decodeHooks(root),
		Gear:   decodeGear(root.of("gear")),
		Phases: decodePhases(root.of("phases").items()),
	}
	p.Beams = decodeBeams(root.of("gear").items(), p.Gear)
	link := newLinker(p, root)
	link.hooksAndPhases(root)
	p.Supports = link.supports(root.of("rigging").items())
	link.hooksAreUsed(root.of("hooks").items())
	p.Beams = link.beamsInUse(p.Beams)
	if err != nil {
		return nil, nil, err
	}
	if len(link.faults) > 0 {
		return nil, link.sorted(), nil
	}
	return p, nil, nil
}

func decodeLift(f fields) Lift {
	l := Lift{
		ID:       f.text("id"),
		Title:    f.text("title"),
		Date:     f.day("date"),
		Category: f.text("category"),
		Units:    quantity.Metric,
		Profile:  f.text("profile"),
		Labels:   f.labels("labels"),
	}
	if l.Category == "" {
		l.Category = "routine"
	}
	if f.text("units") == "us" {
		l.Units = quantity.US
	}
	if t := f.of("temperature"); t.exists() {
		l.Temperature = &TemperatureRange{Lowest: *orZero(t.temperature("lowest")), Highest: *orZero(t.temperature("highest"))}
	}
	return l
}

// orZero stands in for a value that the schemas require: where it can't be
// read that is an error already.
func orZero[T any](v *T) *T {
	if v == nil {
		v = new(T)
	}
	return v
}

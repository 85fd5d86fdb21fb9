package compute

import (
	"strings"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

func slashed(dotted string) string { return strings.ReplaceAll(dotted, ".", "/") }

// over is what the upper eyes of the legs go over.
type over struct {
	what  string
	name  string
	width *quantity.Length
	input facts.Input
	at    string // pointer of the width, where it is given
}

// fits lists where an eye goes over the hook or over the link.
func (w *work) fits() {
	body := w.gatheredOn()
	for _, leg := range w.plan.Support.Legs {
		sling, ok := leg.Down[0].Item.(*gear.WireRopeSling)
		if !ok {
			continue // a shackle at the top has no eye to spread
		}
		w.fit(leg, sling, body)
	}
}

func (w *work) gatheredOn() over {
	s := w.plan.Support
	if len(s.By) == 0 {
		return over{"eye_over_hook", "the crane hook", w.plan.Hook.BodyWidth, w.hookWidthInput(), w.plan.Hook.Pointer + "/body_width"}
	}
	link := s.By[len(s.By)-1].Item
	width, field := link.Section()
	base := link.Base()
	return over{"eye_over_link", base.ID, width, input(base.Pointer, field, base.ID+"'s "+words(field)), base.Pointer + "/" + field}
}

func (w *work) fit(leg plan.Leg, sling *gear.WireRopeSling, body over) {
	f := facts.Fit{
		Record:     facts.Record{Key: "fit/" + leg.ID + "/" + sling.ID + "/upper", At: at(sling.Upper.Pointer)},
		What:       body.what,
		Inner:      sling.ID + "'s upper eye",
		Outer:      body.name,
		Thimble:    sling.Upper.Thimble,
		EyeLengthM: number(sling.Upper.Length),
		EyeWidthM:  number(sling.Upper.Width),
		BodyWidthM: number(body.width),
	}
	if f.Thimble {
		w.wait(f.Key, []facts.Input{input(sling.Upper.Pointer, "eyes.upper.width", "the inside width of the thimble in "+sling.ID+"'s upper eye")}, absent(f, "eye_width_m")...)
	}
	var needs []facts.Input
	if f.EyeLengthM == nil {
		in := input(sling.Upper.Pointer, "eyes.upper.length", sling.ID+"'s upper eye length")
		w.wait(f.Key, []facts.Input{in}, "eye_length_m")
		needs = append(needs, in)
	}
	if f.BodyWidthM == nil {
		w.wait(f.Key, []facts.Input{body.input}, "body_width_m")
		needs = append(needs, body.input)
	} else {
		w.relate(f.Key, body.at, "the width it goes over")
	}
	if len(needs) == 0 {
		f.WidthOverLengthRatio = ptr(*f.BodyWidthM / *f.EyeLengthM)
		f.EyeIncludedAngleDeg = ptr(capacity.EyeIncludedAngleDeg(*f.EyeLengthM, *f.BodyWidthM))
	}
	w.wait(f.Key, needs, absent(f, "width_over_length_ratio", "eye_included_angle_deg")...)
	w.out.Document.Fits = append(w.out.Document.Fits, f)
}

package hang

import (
	"math"
	"strings"
	"sync"
	"testing"

	"liftlint/internal/plan"
	"liftlint/internal/quantity"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

var validator = sync.OnceValues(validate.New)

// written reads a plan that has to be valid, with pairs of text to change.
func written(t testing.TB, text string, pairs ...string) *plan.Plan {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("nothing reads %q", pairs[i])
		}
		text = strings.ReplaceAll(text, pairs[i], pairs[i+1])
	}
	text = strings.ReplaceAll("liftlint: 1\nlift: {id: A, title: A}\n"+text, "THICK", "kind: wire_rope_sling, core: iwrc, diameter: 60 mm, mass: 0.1 kg")
	doc, faults := yamldoc.Read("plan", []byte(text))
	if len(faults) > 0 {
		t.Fatalf("not read: %v", faults)
	}
	v, err := validator()
	if err != nil {
		t.Fatal(err)
	}
	if faults := v.Plan(doc); len(faults) > 0 {
		t.Fatalf("not valid: %v\n%s", faults, text)
	}
	p, faults, err := plan.Decode(doc)
	if err != nil || len(faults) > 0 {
		t.Fatalf("not linked: %v %v", faults, err)
	}
	return p
}

// hung hangs a plan that has to hang steady.
func hung(t testing.TB, text string, pairs ...string) *Lift {
	t.Helper()
	l := Of(written(t, text, pairs...))
	if !l.Steady() {
		t.Fatalf("it does not hang: needs %v, troubles %v, %s", l.Needs, l.Troubles, l.Reason)
	}
	return l
}

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s is %.9g, not %.9g", what, got, want)
	}
}

func sin(deg float64) float64 { return math.Sin(deg * math.Pi / 180) }
func cos(deg float64) float64 { return math.Cos(deg * math.Pi / 180) }

const gravity = quantity.StandardGravity

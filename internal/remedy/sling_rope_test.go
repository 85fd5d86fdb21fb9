package remedy

import (
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

func ptr[T any](v T) *T { return &v }

// TestLongerBodyIsLongEnoughAndNoLonger makes the sling longer by the length
// offered, and by a step less, and asks for its plain rope again.
func TestLongerBodyIsLongEnoughAndNoLonger(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		units := rapid.SampledFrom([]quantity.System{quantity.Metric, quantity.US}).Draw(rt, "units")
		d := float64(rapid.IntRange(6, 60).Draw(rt, "diameter, mm")) / 1000
		length := float64(rapid.IntRange(500, 3000).Draw(rt, "length, mm")) / 1000
		limit := float64(rapid.SampledFrom([]int{10, 15, 20}).Draw(rt, "limit"))
		clear := func(lengthM float64) float64 { return capacity.ClearRopeM(lengthM, 0.1, 5*d, 0.2, 5*d) / d }
		if clear(length) <= 0 || clear(length) >= limit {
			rt.Skip("not short, or nothing left")
		}
		r := facts.Rope{DiameterM: &d, ClearRopeD: ptr(clear(length)), SplicesGiven: true}
		text, ok := New(nil, conditions(), nil, units).Mend("longer_body", facts.ViewOf(r), "clear_rope_d", limit)
		if !ok {
			rt.Fatal("nothing is offered")
		}
		more := lengthIn(rt, text, "at least")
		if got := facts.Round(clear(length + more)); got < limit {
			rt.Fatalf("%q: plain rope of %g diameters", text, got)
		}
		if got := facts.Round(clear(length + more - stepOf(units))); got >= limit {
			rt.Fatalf("%q: a step less leaves %g diameters", text, got)
		}
	})
}

// lengthIn reads the length that follows the words.
func lengthIn(t interface{ Fatalf(string, ...any) }, text, after string) float64 {
	_, rest, _ := strings.Cut(text, after+" ")
	for _, end := range []string{" longer", " inside", ","} {
		rest, _, _ = strings.Cut(rest, end)
	}
	l, err := quantity.ParseLength(rest)
	if err != nil {
		t.Fatalf("%q names no length after %q: %v", text, after, err)
	}
	return float64(l)
}

func TestNoLongerBodyWithoutExactFigures(t *testing.T) {
	m := New(nil, conditions(), nil, quantity.Metric)
	whole := facts.Rope{DiameterM: ptr(0.014), ClearRopeD: ptr(8.0), SplicesGiven: true}
	if text, ok := m.Mend("longer_body", facts.ViewOf(whole), "clear_rope_d", 10); !ok || text != "a sling that is at least 30 mm longer with such eyes and splices, or one with shorter eyes" {
		t.Errorf("%q", text) // 2 times 14 mm, in steps of 10 mm
	}
	for name, change := range map[string]func(*facts.Rope){
		"splices not given": func(r *facts.Rope) { r.SplicesGiven = false },
		"nothing left":      func(r *facts.Rope) { r.ClearRopeD = ptr(0.0) },
		"clear not known":   func(r *facts.Rope) { r.ClearRopeD = nil },
		"no diameter":       func(r *facts.Rope) { r.DiameterM = nil },
		"long enough":       func(r *facts.Rope) { r.ClearRopeD = ptr(10.0) },
	} {
		r := whole
		change(&r)
		if text, ok := m.Mend("longer_body", facts.ViewOf(r), "clear_rope_d", 10); ok {
			t.Errorf("%s: %q", name, text)
		}
	}
}

func TestThickerRope(t *testing.T) {
	for units, want := range map[quantity.System]string{quantity.Metric: "a sling of rope of at least 8 mm", quantity.US: "a sling of rope of at least 5/16 in"} {
		if text, ok := New(nil, conditions(), nil, units).Mend("thicker_rope", facts.ViewOf(facts.Rope{}), "diameter_m", 0.008); !ok || text != want {
			t.Errorf("%q", text)
		}
	}
	if text, ok := New(nil, conditions(), nil, quantity.Metric).Mend("thicker_rope", facts.ViewOf(facts.Rope{}), "diameter_m", 0); ok {
		t.Errorf("%q", text)
	}
}

// TestBelievableTag: 2.7 t on the tag, at 120 % of what is believable.
func TestBelievableTag(t *testing.T) {
	text, err := os.ReadFile("../../policies/bases/two_legs.lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	p, f := computed(t, []byte(strings.ReplaceAll(string(text), "rated_load: 2.25 t", "rated_load: 2.7 t")))
	g := facts.Gear{ID: "S1", RatedRatio: ptr(1.2)}
	for units, want := range map[quantity.System]string{
		quantity.Metric: "compare the tag with the certificate: by its rope the tag would show about 2.25 t, and it shows 2.7 t",
		quantity.US:     "compare the tag with the certificate: by its rope the tag would show about 4960 lb, and it shows 5950 lb",
	} {
		if got, ok := New(p, conditions(), f, units).Mend("believable_tag", facts.ViewOf(g), "rated_over_believable_ratio", 1.1); !ok || got != want {
			t.Errorf("%q", got)
		}
	}
	for name, stranger := range map[string]facts.Gear{"no such gear": {ID: "S7", RatedRatio: ptr(1.2)}, "no ratio": {ID: "S1"}, "no sling": {ID: "K1", RatedRatio: ptr(1.2)}} {
		if got, ok := New(p, conditions(), f, quantity.Metric).Mend("believable_tag", facts.ViewOf(stranger), "rated_over_believable_ratio", 1.1); ok {
			t.Errorf("%s: %q", name, got)
		}
	}
}

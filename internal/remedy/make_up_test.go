package remedy

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// openText is a load on two legs, the first with a sling of no length, from a hook
// 3 m above its points, so that each leg has to be hypot(1, 3) = 3.1623 m long. More
// gear lies by.
func openText(more string) []byte {
	return fmt.Appendf(nil, `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 2 t
  center_of_gravity: {x: 1 m, y: 0 m, z: 0 m}
  attachments:
    - {id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
    - {id: B, kind: padeye, x: 2 m, y: 0 m, z: 1 m}
gear:
  - {id: S1, kind: wire_rope_sling, diameter: 16 mm}
  - {id: S2, kind: wire_rope_sling, diameter: 16 mm, length: 3.1623 m}
%srigging:
  - from: hook
    height_above_datum: 4 m
    legs:
      - {down: [S1], end: {kind: to, at: A}}
      - {down: [S2], end: {kind: to, at: B}}
`, more)
}

func spareSling(id, length, rated string) string {
	return fmt.Sprintf("  - {id: %s, kind: wire_rope_sling, diameter: 16 mm, length: %s, tag: {condition: legible, rated_load: %s}}\n", id, length, rated)
}

func spareShackle(id, length string) string {
	return fmt.Sprintf("  - {id: %s, kind: shackle, inside_length: %s, rated_load: 3 t}\n", id, length)
}

func TestMakeUp(t *testing.T) {
	const order = "order a sling of 3.16 m bearing to bearing; no slings of the plan that work nowhere come near that"
	for name, c := range map[string]struct{ more, want string }{
		"nothing lies by": {"", order},
		"one sling":       {spareSling("X", "3.15 m", "3 t"), "X: 3.15 m together, where 3.16 m is needed"},
		"the nearer of two": {spareSling("X", "3.2 m", "3 t") + spareSling("Z", "3.17 m", "3 t"),
			"Z: 3.17 m together, where 3.16 m is needed"},
		"two, with the shackle that joins them": {spareSling("X", "1.5 m", "3 t") + spareSling("Z", "1.6 m", "3 t") + spareShackle("K", "70 mm"),
			"X and Z joined by K: 3.17 m together, where 3.16 m is needed"},
		"two without a shackle":     {spareSling("X", "1.5 m", "3 t") + spareSling("Z", "1.66 m", "3 t"), order},
		"two with a shackle beside": {spareSling("X", "3.16 m", "3 t") + spareSling("Z", "1.6 m", "3 t") + spareShackle("K", "70 mm"), "X: 3.16 m together, where 3.16 m is needed"},
		"over by 3 %":               {spareSling("X", "3.26 m", "3 t"), order},
		"over by 1.5 %":             {spareSling("X", "3.21 m", "3 t"), "X: 3.21 m together, where 3.16 m is needed"},
		"under by 10 %":             {spareSling("X", "2.85 m", "3 t"), order},
		"too weak":                  {spareSling("X", "3.16 m", "500 kg"), order},
		"rated load not known":      {"  - {id: X, kind: wire_rope_sling, diameter: 16 mm, length: 3.16 m}\n", order},
	} {
		t.Run(name, func(t *testing.T) {
			p, f := computed(t, openText(c.more))
			leg := f.Document.Legs[0]
			if !leg.LengthOpen || math.Abs(*leg.LengthNeededM-math.Hypot(1, 3)) > 1e-6 {
				t.Fatalf("open %v, it needs %v m", leg.LengthOpen, *leg.LengthNeededM)
			}
			got, ok := New(p, conditions(), f, quantity.Metric).Mend("make_up", facts.ViewOf(leg), "", 0)
			if !ok || got != c.want {
				t.Errorf("got  %q, %v\nwant %q", got, ok, c.want)
			}
		})
	}
}

// TestOrderInInches: 3.1623 m are 124.50 in, to half an inch.
func TestOrderInInches(t *testing.T) {
	p, f := computed(t, openText(""))
	got, ok := New(p, conditions(), f, quantity.US).Mend("make_up", facts.ViewOf(f.Document.Legs[0]), "", 0)
	if !ok || !strings.HasPrefix(got, "order a sling of 10 ft 4-1/2 in bearing") {
		t.Errorf("%q, %v", got, ok)
	}
}

func TestNoMakeUpForALengthThatIsGiven(t *testing.T) {
	p, f := computed(t, openText(""))
	if text, ok := New(p, conditions(), f, quantity.Metric).Mend("make_up", facts.ViewOf(f.Document.Legs[1]), "", 0); ok {
		t.Errorf("%q", text)
	}
	if text, ok := New(nil, conditions(), f, quantity.Metric).Mend("make_up", facts.ViewOf(f.Document.Legs[0]), "", 0); ok {
		t.Errorf("without a plan: %q", text)
	}
}

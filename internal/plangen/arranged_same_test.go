package plangen_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/plangen"
	"liftlint/internal/quantity"
)

// asChanged compares the figures of arranged plans with those of the same plans
// changed.
func asChanged(t *testing.T, within float64, factor func(field string) float64, change func(node)) {
	t.Helper()
	t.Parallel()
	v := validator(t)
	for seed := range arrangedSeeds() / 2 {
		what := fmt.Sprintf("seed %d, %s", seed, plangen.ArrangementOf(seed))
		before := parsed(t, plangen.Arranged(seed))
		named(before)
		after := parsed(t, asText(before))
		change(after)
		collections := []string{"loads", "hooks", "legs", "beams", "hitches", "positions"}
		f, g := steadyFacts(t, v, seed, asText(before)), steadyFacts(t, v, seed, asText(after))
		alike(t, what, numbers(t, f, collections...), numbers(t, g, collections...), within, factor)
	}
}

// named gives every leg a name, so that its order names it no more.
func named(v node) {
	for i, s := range listOf(v, "rigging") {
		for j, leg := range listOf(s, "legs") {
			leg["id"] = fmt.Sprintf("leg%d_%d", i+1, j+1)
		}
	}
}

// TestMirrored: a lift seen in a mirror along its length hangs alike.
func TestMirrored(t *testing.T) {
	roll := func(field string) float64 {
		if strings.HasSuffix(field, "roll_from_horizontal_deg") {
			return -1
		}
		return 1
	}
	asChanged(t, 1e-5, roll, func(v node) {
		for _, b := range listOf(v, "load", "bodies") {
			if b["axis"] == "across" { // the start is the end with the smallest coordinate
				start := b["start"].(node)
				start["y"] = meters(lengthM(start["y"]) + lengthM(b["length"]))
				stationsFromOtherEnd(v, b)
			}
		}
		each(v, func(m node) {
			if y, ok := m["y"]; ok {
				m["y"] = meters(-lengthM(y))
			}
			if turn, ok := m["turned_in_plan"]; ok {
				m["turned_in_plan"] = fmt.Sprintf("%g deg", -must(quantity.ParseAngle(turn.(string))))
			}
		})
	})
}

func stationsFromOtherEnd(v, body node) {
	each(v, func(m node) {
		if m["body"] == body["id"] {
			m["station"] = meters(lengthM(body["length"]) - lengthM(m["station"]))
		}
	})
}

// TestTwiceTheMass: all of it twice as heavy on ropes of twice the metal, each lying
// along the same line round bodies as much thinner, hangs at the same angles with
// twice the forces.
func TestTwiceTheMass(t *testing.T) {
	force := func(field string) float64 {
		if strings.HasSuffix(field, "_n") || strings.HasSuffix(field, "_nm") || strings.HasSuffix(field, "_kg") {
			return 2
		}
		return 1
	}
	v := validator(t)
	t.Parallel()
	for seed := range arrangedSeeds() / 2 {
		text := plangen.Arranged(seed)
		after := parsed(t, text)
		double(after)
		f, g := steadyFacts(t, v, seed, text), steadyFacts(t, v, seed, asText(after))
		alike(t, fmt.Sprintf("seed %d, %s", seed, plangen.ArrangementOf(seed)), hanging(numbers(t, f, "loads", "hooks", "legs", "positions", "beams")),
			hanging(numbers(t, g, "loads", "hooks", "legs", "positions", "beams")), 2e-3, force)
	}
}

func double(v node) {
	grown := 0.0
	for _, g := range listOf(v, "gear") {
		if d, ok := g["diameter"]; ok {
			grown = (math.Sqrt2 - 1) * lengthM(d)
			g["diameter"] = meters(math.Sqrt2 * lengthM(d))
		}
	}
	for _, b := range listOf(v, "load", "bodies") {
		for _, key := range []string{"diameter", "width", "height"} {
			if size, ok := b[key]; ok {
				b[key] = meters(lengthM(size) - grown)
			}
		}
	}
	each(v, func(m node) {
		if mass, ok := m["mass"]; ok {
			m["mass"] = fmt.Sprintf("%.9f kg", 2*massKg(mass))
		}
	})
}

// hanging leaves out what is no force, no angle and no mass.
func hanging(all map[string]float64) map[string]float64 {
	out := map[string]float64{}
	for field, v := range all {
		if strings.HasSuffix(field, "_n") || strings.HasSuffix(field, "_nm") || strings.HasSuffix(field, "horizontal_deg") || strings.HasSuffix(field, "_kg") {
			if !strings.Contains(field, "rated") {
				out[field] = v
			}
		}
	}
	return out
}

// TestReordered: the order in which a plan lists its supports, legs, gear, bodies and
// attachments changes no figure.
func TestReordered(t *testing.T) {
	asChanged(t, 1e-5, same, func(v node) {
		for _, s := range listOf(v, "rigging") {
			slices.Reverse(s["legs"].([]any))
		}
		for _, list := range []any{v["rigging"], v["gear"], v["hooks"], v["load"].(node)["attachments"], v["load"].(node)["bodies"]} {
			if items, ok := list.([]any); ok {
				slices.Reverse(items)
			}
		}
	})
}

// TestOtherUnits: lengths in feet or inches and masses in pounds give the same
// figures (NIST SP 811, appendix B: 0.3048 m, 0.0254 m, 0.45359237 kg, all exact).
func TestOtherUnits(t *testing.T) {
	asChanged(t, 1e-6, same, func(v node) {
		delete(v["lift"].(node), "units")
		n := 0
		each(v, func(m node) {
			for key, value := range m {
				text, ok := value.(string)
				if !ok || strings.HasPrefix(key, "rated") || strings.HasSuffix(key, "rated_load") || key == "title" {
					continue
				}
				n++
				if mass, err := quantity.ParseMass(text); err == nil {
					m[key] = fmt.Sprintf("%.12f lb", float64(mass)/0.45359237)
				} else if length, err := quantity.ParseLength(text); err == nil && n%2 == 0 {
					m[key] = fmt.Sprintf("%.12f ft", float64(length)/0.3048)
				} else if err == nil {
					m[key] = fmt.Sprintf("%.12f in", float64(length)/0.0254)
				}
			}
		})
	})
}

// TestTooShortToGoRound: of a sling that its body would take whole there is no
// figure, and the trouble stands at its leg.
func TestTooShortToGoRound(t *testing.T) {
	t.Parallel()
	v := validator(t)
	tried := 0
	for seed := range arrangedSeeds() / 2 {
		root := parsed(t, plangen.Arranged(seed))
		for i, s := range listOf(root, "rigging") {
			for j, leg := range listOf(s, "legs") {
				if _, round := leg["end"].(node)["round"]; !round {
					continue
				}
				tried++
				short := parsed(t, asText(root))
				parts := texts(listOf(listOf(short, "rigging")[i], "legs")[j]["down"])
				for _, g := range listOf(short, "gear") {
					if slices.Contains(parts, g["id"].(string)) && g["kind"] == "wire_rope_sling" {
						g["length"] = "200 mm"
					}
				}
				f, troubles := computed(t, v, asText(short))
				want := fmt.Sprintf("/rigging/%d/legs/%d", i, j)
				if len(troubles) == 0 || troubles[0].At != want || !strings.Contains(troubles[0].Message, "too short") {
					t.Errorf("seed %d, %s: %v, not at %s", seed, plangen.ArrangementOf(seed), troubles, want)
				}
				for _, l := range f.Document.Legs {
					if l.TensionN != nil || l.AngleFromHorizontalDeg != nil {
						t.Errorf("seed %d: leg %s has figures", seed, l.ID)
					}
				}
			}
		}
	}
	if tried < 60 {
		t.Errorf("only %d slings go round bodies", tried)
	}
}

package plangen_test

import (
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
	"liftlint/internal/plangen"
	"liftlint/internal/quantity"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// arrangedSeeds is how many plans each property is held to.
func arrangedSeeds() uint64 { return 20 * uint64(plangen.Arrangements()) }

func validator(t testing.TB) *validate.Validator {
	t.Helper()
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// decoded reads a plan that has to be valid.
func decoded(t testing.TB, v *validate.Validator, text string) *plan.Plan {
	t.Helper()
	doc, faults := yamldoc.Read("plan", []byte(text))
	if len(faults) > 0 {
		t.Fatalf("not read: %v\n%s", faults, text)
	}
	if faults := v.Plan(doc); len(faults) > 0 {
		t.Fatalf("not valid: %v\n%s", faults, text)
	}
	p, faults, err := plan.Decode(doc)
	if err != nil || len(faults) > 0 {
		t.Fatalf("not linked: %v %v\n%s", faults, err, text)
	}
	return p
}

func conditions() compute.Conditions {
	return compute.Conditions{
		Profile: "us", Stage: "review", Decides: compute.ThreeLegs, Parts: capacity.EqualParts, BridlePractice: capacity.ByAngle,
		IntervalMonths: func(_, _ string) (int, bool) { return 12, true },
	}
}

func computed(t testing.TB, v *validate.Validator, text string) (*facts.Facts, []hang.Trouble) {
	t.Helper()
	return compute.Facts(decoded(t, v, text), conditions())
}

// steadyFacts computes a plan that has to hang steady.
func steadyFacts(t testing.TB, v *validate.Validator, seed uint64, text string) *facts.Facts {
	t.Helper()
	f, troubles := computed(t, v, text)
	if hangs := f.Document.Loads[0].Hangs; len(troubles) > 0 || hangs == nil || *hangs != "steady" {
		t.Fatalf("seed %d, %s: %v, %v\n%s", seed, plangen.ArrangementOf(seed), hangs, troubles, text)
	}
	return f
}

// TestArrangedPlansHang: each is valid and hangs steady in all its phases, nearly as
// it is meant to, and the same text and facts come of the same seed.
func TestArrangedPlansHang(t *testing.T) {
	t.Parallel()
	v := validator(t)
	for seed := range arrangedSeeds() {
		text := plangen.Arranged(seed)
		if again := plangen.Arranged(seed); text != again {
			t.Fatalf("seed %d gives two texts", seed)
		}
		f := steadyFacts(t, v, seed, text)
		if tilt := *f.Document.Loads[0].TiltDeg; tilt > 5 {
			t.Errorf("seed %d, %s: tilted by %g deg", seed, plangen.ArrangementOf(seed), tilt)
		}
		if seed%4 > 0 {
			continue
		}
		first, _ := json.Marshal(f.Document)
		second, _ := json.Marshal(steadyFacts(t, v, seed, text).Document)
		if diff := cmp.Diff(string(first), string(second)); diff != "" {
			t.Errorf("seed %d gives two sets of facts: %s", seed, diff)
		}
	}
}

// TestArrangedPlansDiffer: the generator reaches what it promises.
func TestArrangedPlansDiffer(t *testing.T) {
	t.Parallel()
	seen := map[string]int{}
	signs := []string{
		"spreader_beam", "lifting_beam", "rocker_plate", "sheave_block", "load_cell", "turnbuckle", "kind: grommet", "doubled: true", "master_link",
		"hooks:", "phases:", "released:", "until:", "height_above_datum:", "tolerance:", "kind: basket", "kind: choke", "kind: runs_to", "up_to:", "kind: round", "kind: box", "turns: 2", "units: us",
	}
	for seed := range arrangedSeeds() {
		text := strings.NewReplacer("'", "", `"`, "").Replace(plangen.Arranged(seed))
		for _, sign := range signs {
			if strings.Contains(text, sign) {
				seen[sign]++
			}
		}
	}
	for _, sign := range signs {
		if seen[sign] < 5 {
			t.Errorf("%q is in %d plans", sign, seen[sign])
		}
	}
}

// hooksOwnN is the weight of what stands for hooks that swing: 0.1 kg each.
const hooksOwnN = 2

// TestHooksCarryAll: by statics, the hooks together carry the load, the beams and
// all the rigging in use, at the upper end of the mass, in every phase.
func TestHooksCarryAll(t *testing.T) {
	t.Parallel()
	v := validator(t)
	for seed := range arrangedSeeds() {
		text := plangen.Arranged(seed)
		p := decoded(t, v, text)
		want := weightBelowHooks(parsed(t, text))
		for _, pos := range hang.Of(p).Positions {
			up := 0.0
			for h := range p.Hooks {
				released := slices.Contains(releasedIn(p, pos.Phase), p.Hooks[h].ID)
				state := pos.Hook(h)
				if released != (state == nil) {
					t.Errorf("seed %d, %s: hook %s released: %v, and on it there is %v", seed, pos.Phase, p.Hooks[h].ID, released, state)
				}
				if state != nil {
					up += math.Abs(state.LoadN.Z)
				}
			}
			if math.Abs(up-want) > 1e-4*want+hooksOwnN {
				t.Errorf("seed %d, %s %s: hooks carry %g N of %g N", seed, plangen.ArrangementOf(seed), pos.Phase, up, want)
			}
			nothingReleased(t, seed, p, &pos)
		}
	}
}

// releasedIn lists the hooks that a phase lets go of.
func releasedIn(p *plan.Plan, phase string) []string {
	for _, ph := range p.Phases {
		if ph.Name == phase || strings.HasPrefix(phase, ph.Name+" at ") {
			return ph.Released
		}
	}
	return nil
}

// nothingReleased: legs of a released hook have no figures.
func nothingReleased(t *testing.T, seed uint64, p *plan.Plan, pos *hang.Position) {
	t.Helper()
	i := -1
	for _, s := range p.Supports {
		for range s.Legs {
			i++
			released := s.Hook >= 0 && slices.Contains(releasedIn(p, pos.Phase), p.Hooks[s.Hook].ID)
			if released != (pos.Line(i) == nil) {
				t.Errorf("seed %d, %s: a leg from %s, released: %v, has a line: %v", seed, pos.Phase, s.From, released, pos.Line(i) != nil)
			}
		}
	}
}

// weightBelowHooks is that of the load, of the beams and of what hangs from them,
// counted from the text of the plan.
func weightBelowHooks(v node) float64 {
	load := v["load"].(node)
	kg := massKg(load["mass"])
	if tolerance, ok := load["mass_tolerance"]; ok {
		kg *= 1 + must(quantity.ParseRatio(tolerance.(string)))
	}
	own := map[string]float64{}
	for _, g := range listOf(v, "gear") {
		own[g["id"].(string)] = massKg(g["mass"])
		if _, beam := g["points"]; beam {
			kg += massKg(g["mass"])
		}
	}
	for _, s := range listOf(v, "rigging") {
		if !strings.Contains(s["from"].(string), ".") {
			continue // what hangs from a hook itself is no part of the model
		}
		for _, id := range texts(s["by"]) {
			kg += own[id]
		}
		for _, leg := range listOf(s, "legs") {
			for _, id := range texts(leg["down"]) {
				kg += own[id]
			}
		}
	}
	return kg * quantity.StandardGravity
}

package compute_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestCenterTolerance: on two legs to points at one height each leg's vertical
// part is the weight times the distance of the center of gravity from the other
// point over that between the points (moments; statics). At worst it lies at the
// near end of its tolerance.
func TestCenterTolerance(t *testing.T) {
	plain := rulesBase(t, "two_legs").facts(t)
	f := rulesBase(t, "two_legs").set("load/center_of_gravity/tolerance", "100 mm").facts(t)
	if got := f.Document.Loads[0].Corners; got != 8 {
		t.Errorf("hung at %d corners", got)
	}
	own, worst := figure(t, f, "leg/hook/1", "tension_n"), figure(t, f, "leg/hook/1", "tension_at_worst_n")
	if own != figure(t, plain, "leg/hook/1", "tension_n") {
		t.Error("the tolerance changes the force as the plan has it")
	}
	if worst < own*1.05 || worst > own*1.15 {
		t.Errorf("%g N at worst, %g as the plan has it: expected about a tenth more", worst, own)
	}
	if by, _ := find(t, f, "leg/hook/1").Field("judged_by"); by != "own_force_at_worst" {
		t.Errorf("judged by %v", by)
	}
	if corner, _ := find(t, f, "leg/hook/1").Field("worst_corner"); corner == nil || corner.(string)[:2] != "-x" {
		t.Errorf("the leg at x = 0 is worst off at %v", corner)
	}
	if a, b := figure(t, plain, "load", "tilt_at_worst_deg"), figure(t, f, "load", "tilt_at_worst_deg"); b < a+1 {
		t.Errorf("tilted by %g deg, %g at worst", a, b)
	}
}

// TestWorstCornerOfThePlanItself: hanging the plan with its center of gravity
// moved to the corner that is named gives the force that is named.
func TestWorstCornerOfThePlanItself(t *testing.T) {
	f := rulesBase(t, "four_legs").set("load/center_of_gravity/tolerance", "150 mm").facts(t)
	corner, _ := find(t, f, "leg/hook/2").Field("worst_corner")
	at := map[string]float64{"x": 1.5, "y": 1, "z": 0.8}
	v := rulesBase(t, "four_legs")
	for axis, x := range at {
		sign := -1.0
		if containsText(corner.(string), "+"+axis) {
			sign = 1
		}
		v.set("load/center_of_gravity/"+axis, written(x+sign*0.15))
	}
	there := v.facts(t)
	near(t, "tension at the corner", figure(t, there, "leg/hook/2", "tension_n"), figure(t, f, "leg/hook/2", "tension_at_worst_n"), 1e-6)
}

// TestLengthTolerance: with one of every sling the most that differences of
// length can do is that within it: more than the own force, less than what any
// differences can do; and it grows with the tolerance.
func TestLengthTolerance(t *testing.T) {
	give := func(v tree, tolerance string, slings ...int) tree {
		for _, i := range slings {
			v["gear"].([]any)[i].(map[string]any)["length_tolerance"] = tolerance
		}
		return v
	}
	any := rulesBase(t, "four_legs").facts(t)
	small := give(rulesBase(t, "four_legs"), "1 mm", 1, 2, 3, 4).facts(t)
	large := give(rulesBase(t, "four_legs"), "4 mm", 1, 2, 3, 4).facts(t)
	some := give(rulesBase(t, "four_legs"), "1 mm", 1, 2, 3).facts(t)
	const leg, bound = "leg/hook/1", "tension_bound_n"
	own := figure(t, any, leg, "tension_n")
	a, b, c := figure(t, small, leg, bound), figure(t, large, leg, bound), figure(t, any, leg, bound)
	if !(own*1.01 < a && a < b && b <= c*(1+1e-3)) {
		t.Errorf("own %g N; within 1 mm %g, within 4 mm %g, of any lengths %g", own, a, b, c)
	}
	if got := figure(t, some, leg, bound); got != c {
		t.Errorf("without the tolerance of one sling %g N, of any lengths %g", got, c)
	}
	if by, _ := find(t, small, leg).Field("bound_by"); by != "length_tolerance" {
		t.Errorf("bound by %v", by)
	}
	if x, y := figure(t, small, leg, "tension_judged_n"), figure(t, any, leg, "tension_judged_n"); x != y {
		t.Errorf("judged with %g N, %g without the tolerance", x, y)
	}
}

// TestOverturnsAtACorner: what stands as the plan has it and not within its
// tolerance is found, and no force is given for what is not meant to happen.
func TestOverturnsAtACorner(t *testing.T) {
	v := rulesBase(t, "two_legs").set("load/center_of_gravity/z", "0.95 m").set("load/center_of_gravity/tolerance", "100 mm")
	f, troubles := v.compute(t)
	if len(troubles) > 0 {
		t.Fatal(troubles)
	}
	l := f.Document.Loads[0]
	if *l.Hangs != "steady" || *l.HangsAtWorst == "steady" {
		t.Errorf("%s, at worst %s at %s", *l.Hangs, *l.HangsAtWorst, *l.WorstCorner)
	}
	for _, field := range []string{"tension_at_worst_n", "tension_judged_n"} {
		if got := labels(lacks(t, f, "leg/hook/1", field)); !containsText(got, "does not hang steady") {
			t.Errorf("%s waits for %q", field, got)
		}
	}
	lacks(t, f, "part/hook/1/S1", "used_ratio")
}

// TestToleranceNeverHelps: whatever the tolerance, no force and no tilt is less
// than without it.
func TestToleranceNeverHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		base := rapid.SampledFrom([]string{"two_legs", "four_legs", "bridle"}).Draw(t, "base")
		x := rapid.Float64Range(-0.2, 0.2).Draw(t, "off")
		make := func() tree {
			v := rulesBaseOf(base)
			c := v["load"].(map[string]any)["center_of_gravity"].(map[string]any)
			mid := map[string]float64{"two_legs": 1, "four_legs": 1.5, "bridle": 1.5}[base]
			c["x"] = written(mid + x)
			return v
		}
		tolerance := rapid.Float64Range(0.001, 0.1).Draw(t, "tolerance")
		plain, _ := computeTree(make())
		v := make()
		v["load"].(map[string]any)["center_of_gravity"].(map[string]any)["tolerance"] = written(tolerance)
		wide, _ := computeTree(v)
		for i, leg := range plain.Document.Legs {
			other := wide.Document.Legs[i]
			if other.TensionJudgedN == nil {
				return // it does not hang steady at a corner
			}
			if *other.TensionJudgedN < *leg.TensionJudgedN*(1-1e-6) {
				t.Fatalf("leg %s is judged with %g N, %g without tolerance", leg.ID, *other.TensionJudgedN, *leg.TensionJudgedN)
			}
		}
		if a, b := *plain.Document.Loads[0].TiltAtWorstDeg, *wide.Document.Loads[0].TiltAtWorstDeg; b < a-1e-6 || math.IsNaN(b) {
			t.Fatalf("tilted by %g deg, %g with tolerance", a, b)
		}
	})
}

// TestNoRestAtALengthCorner: a load that does not hang with the lengths as far off
// as they may be is told, and no force of it is given.
func TestNoRestAtALengthCorner(t *testing.T) {
	v := rulesBase(t, "four_legs")
	for _, i := range []int{1, 2, 3, 4} {
		v["gear"].([]any)[i].(map[string]any)["length_tolerance"] = "1.2 m"
	}
	f, troubles := v.compute(t)
	if len(troubles) > 0 {
		t.Fatal(troubles)
	}
	l := f.Document.Loads[0]
	if *l.Hangs != "steady" || *l.HangsAtWorst == "steady" || l.WorstCorner == nil || !containsText(*l.WorstCorner, "length tolerance") {
		t.Errorf("%s, at worst %s: %+v", *l.Hangs, *l.HangsAtWorst, l)
	}
	lacks(t, f, "leg/hook/1", "tension_judged_n")
}

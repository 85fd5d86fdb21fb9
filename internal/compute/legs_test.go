package compute_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/compute"
)

func contains(text, part string) bool { return strings.Contains(text, part) }

// TestRouteLength: slings and shackles of a leg add up, the link does not
// belong to a leg.
func TestRouteLength(t *testing.T) {
	f := example(t, "pump-skid").facts(t)
	near(t, "length", figure(t, f, "leg/hook/1", "length_m"), 6.4+0.084, 1e-9)
	f = example(t, "valve-block-us").facts(t)
	near(t, "length", figure(t, f, "leg/hook/south", "length_m"), (9*12+11.25+2.8125)*0.0254, 1e-9)
}

// TestRouteAsksForAllItLacks: one round of questions, not one for each field.
func TestRouteAsksForAllItLacks(t *testing.T) {
	v := example(t, "pump-skid").drop("gear/1/length", "gear/1/diameter", "gear/5/inside_length")
	f, troubles := v.compute(t)
	if len(troubles) > 0 {
		t.Fatalf("missing data is no trouble: %v", troubles)
	}
	if got, want := labels(lacks(t, f, "leg/hook/1", "length_m")), "S1's length `length` at #/gear/1; K1's inside length `inside_length` at #/gear/5"; got != want {
		t.Errorf("the length waits for %q, not %q", got, want)
	}
	want := "S1's length `length` at #/gear/1; K1's inside length `inside_length` at #/gear/5; S1's diameter `diameter` at #/gear/1"
	if got := labels(lacks(t, f, "leg/hook/3", "tension_n")); got != want {
		t.Errorf("the force in a leg that is complete waits for %q, not %q", got, want)
	}
}

// TestDiameterSettlesFourLegsOnly: with up to three legs statics gives the
// forces, so that a rope of unknown diameter hinders nothing.
func TestDiameterSettlesFourLegsOnly(t *testing.T) {
	f := example(t, "valve-block-us").facts(t)
	want := figure(t, f, "leg/hook/north", "tension_n")
	f = example(t, "valve-block-us").drop("gear/0/diameter", "gear/1/diameter").facts(t)
	near(t, "force", figure(t, f, "leg/hook/north", "tension_n"), want, 0.002*want)

	heavy := example(t, "valve-block-us").drop("gear/0/diameter", "gear/1/diameter").set("load/mass", "4000 t")
	near(t, "force under a great mass", figure(t, heavy.facts(t), "leg/hook/north", "tension_n"), want*4000/(6200*0.00045359237), 0.01*want*4000/2.8)

	f, _ = example(t, "pump-skid").drop("gear/2/diameter").compute(t)
	if got := labels(lacks(t, f, "leg/hook/1", "tension_n")); got != "S2's diameter `diameter` at #/gear/2" {
		t.Errorf("on four legs the force waits for %q", got)
	}
}

// TestCountedShare: W / (n sin b), by the profile's count; parts go by the
// greater of it and the leg's own force.
func TestCountedShare(t *testing.T) {
	p := decode(t, example(t, "pump-skid").text())
	for decides, count := range map[compute.Decides]int{compute.TwoLegs: 2, compute.ThreeLegs: 3} {
		c := conditions()
		c.Decides = decides
		f, _ := compute.Facts(p, c)
		b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg") * math.Pi / 180
		want := 8823 * gravity / (float64(count) * math.Sin(b))
		near(t, "counted force", figure(t, f, "leg/hook/1", "tension_counted_n"), want, 1e-4*want)
		own := figure(t, f, "leg/hook/1", "tension_n")
		near(t, "force judged by", figure(t, f, "leg/hook/1", "tension_judged_n"), math.Max(own, want), 1e-4*want)
		const shackleKg, slingKg = 2.6, 14.0
		near(t, "load of the shackle", figure(t, f, "part/hook/1/K1", "load_n"), math.Max(own, want)+shackleKg*gravity, 1e-6*want)
		near(t, "load of the sling", figure(t, f, "part/hook/1/S1", "load_n"), math.Max(own, want)+(shackleKg+slingKg)*gravity, 1e-6*want)
		by, _ := find(t, f, "leg/hook/1").Field("judged_by")
		if (by == "legs_counted") != (want > own) {
			t.Errorf("with %d legs counted: %v, though %g of %g", count, by, want, own)
		}
	}
}

// TestTwoLegsCarryTheirOwn: no count and no bound apart from statics, and none
// of either asked for.
func TestTwoLegsCarryTheirOwn(t *testing.T) {
	f := example(t, "valve-block-us").facts(t)
	own := figure(t, f, "leg/hook/south", "tension_n")
	near(t, "force judged by", figure(t, f, "leg/hook/south", "tension_judged_n"), own, 0)
	for key, field := range map[string]string{
		"leg/hook/south": "tension_counted_n", "leg/hook/north": "tension_bound_n", "part/hook/south/S2": "load_bound_n",
	} {
		if got := labels(lacks(t, f, key, field)); got != "" {
			t.Errorf("%s of %s waits for %q and concerns no leg of two", field, key, got)
		}
	}
}

// TestSlackLegIsCountedAllTheSame: a leg that is too long carries nothing as
// it hangs, and is still judged by the force it may come to carry.
func TestSlackLegIsCountedAllTheSame(t *testing.T) {
	f := example(t, "pump-skid").set("gear/1/length", "6.8 m").facts(t)
	if slack, _ := find(t, f, "leg/hook/1").Field("slack"); slack != true {
		t.Fatalf("slack is %v", slack)
	}
	if got := labels(lacks(t, f, "leg/hook/1", "angle_from_horizontal_deg")); got != "leg hook/1 hangs slack" {
		t.Errorf("the angle is absent because %q", got)
	}
	near(t, "its own force", figure(t, f, "leg/hook/1", "tension_n"), 0, 1)
	if judged := figure(t, f, "leg/hook/1", "tension_judged_n"); judged < 8823*gravity/3 {
		t.Errorf("judged by %g N", judged)
	}
}

// TestForcesHoldTheLoad: the upward parts of the leg forces are the weight,
// whatever its place (checked from the facts alone), and the bound is never
// less than the force.
func TestForcesHoldTheLoad(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		v := example(t, "pump-skid")
		v.set("load/center_of_gravity/x", meters(rapid.IntRange(2800, 3400).Draw(rt, "x mm")))
		v.set("load/center_of_gravity/y", meters(rapid.IntRange(1100, 1300).Draw(rt, "y mm")))
		v.set("gear/1/length", meters(rapid.IntRange(6390, 6410).Draw(rt, "length mm")))
		f := v.facts(t)
		up := 0.0
		for _, key := range []string{"leg/hook/1", "leg/hook/2", "leg/hook/3", "leg/hook/4"} {
			if slack, _ := find(t, f, key).Field("slack"); slack == true {
				continue
			}
			force := figure(t, f, key, "tension_n")
			up += force * math.Sin(figure(t, f, key, "angle_from_horizontal_deg")*math.Pi/180)
			if bound := figure(t, f, key, "tension_bound_n"); bound < force*(1-1e-6) {
				rt.Fatalf("%s carries %g, and at most %g", key, force, bound)
			}
		}
		if weight := 8823 * gravity; math.Abs(up-weight) > 1e-5*weight {
			rt.Fatalf("the legs hold %g of %g N", up, weight)
		}
	})
}

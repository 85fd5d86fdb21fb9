package compute_test

import (
	"fmt"
	"math"
	"testing"
)

// TestShackleInPadeye: a hole that does not lie across the pull leans the pull
// toward an end of the pin, and the shackle carries less. Closed form: the sine
// of the lean is the cosine of the leg's angle from horizontal times the sine of
// the angle in plan between the hole's right direction and its own.
func TestShackleInPadeye(t *testing.T) {
	for _, c := range []struct {
		turnedDeg string
		plan      float64
		factor    float64
	}{
		{"0 deg", 0, 1},
		{"10 deg", 10, 1},    // leans by 3.9 deg
		{"20 deg", 20, 0.7},  // leans by 7.7 deg
		{"-90 deg", 90, 0.7}, // the pin along the leg: leans by 23 deg
	} {
		v := rulesBase(t, "two_legs").set("load/attachments/0/turned_in_plan", c.turnedDeg)
		f := v.facts(t)
		leg := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
		want := math.Asin(math.Cos(leg*math.Pi/180)*math.Sin(c.plan*math.Pi/180)) * 180 / math.Pi
		if got := figure(t, f, "part/hook/1/K1", "pull_off_deg"); math.Abs(got-want) > 0.01 {
			t.Errorf("turned by %s the pull leans by %g deg, want %g", c.turnedDeg, got, want)
		}
		if got := figure(t, f, "attachment/A", "out_of_plane_deg"); math.Abs(got-want) > 0.01 {
			t.Errorf("turned by %s the pull is %g deg out of the plane, want %g", c.turnedDeg, got, want)
		}
		marked := figure(t, f, "part/hook/1/K1", "marked_load_n")
		if got := figure(t, f, "part/hook/1/K1", "rated_load_n"); !alike(got, c.factor*marked, 1e-8) {
			t.Errorf("turned by %s the shackle may carry %g of its %g N", c.turnedDeg, got, marked)
		}
	}
}

// TestNothingIsAssumedOfAHole: without its axis neither the pull's lean nor the
// shackle's rated load is known.
func TestNothingIsAssumedOfAHole(t *testing.T) {
	f := rulesBase(t, "two_legs").drop("load/attachments/0/hole_axis").facts(t)
	for key, fields := range map[string][]string{
		"part/hook/1/K1": {"pull_off_deg", "rated_load_n", "used_ratio"},
		"attachment/A":   {"out_of_plane_deg"},
	} {
		for _, field := range fields {
			if got, want := labels(lacks(t, f, key, field)), "attachment A's hole axis `hole_axis` at #/load/attachments/0"; got != want {
				t.Errorf("%s of %s waits for %q", field, key, got)
			}
		}
	}
	if _, ok := find(t, f, "part/hook/2/K2").Field("used_ratio"); !ok {
		t.Error("the other shackle is not rated either")
	}
}

// eyebolts puts an eyebolt in place of each padeye of a plan on two legs.
func eyebolts(t testing.TB, ratedAt string) tree {
	v := rulesBase(t, "two_legs")
	for i, x := range []string{"0 m", "2 m"} {
		a := parse(t, fmt.Sprintf(`{id: %c, kind: eyebolt, x: %s, y: 0.5 m, z: 1 m, pattern: shouldered, seated: true, axis: up, hole_axis: across, rated_load: 3 t, hole: 22 mm, thickness: 20 mm}`, 'A'+i, x))
		if ratedAt != "" {
			a["rated_at"] = []any(parse(t, "list: "+ratedAt)["list"].([]any))
		}
		v.set(fmt.Sprintf("load/attachments/%d", i), map[string]any(a))
	}
	return v
}

// TestEyebolt: away from its axis its own rating at that angle holds, or none.
func TestEyebolt(t *testing.T) {
	const tonne = 1000 * gravity
	f := eyebolts(t, "[{angle_from_axis: 45 deg, rated_load: 1.2 t}, {angle_from_axis: 90 deg, rated_load: 0.7 t}]").facts(t)
	leg := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
	if got := figure(t, f, "attachment/A", "off_axis_deg"); math.Abs(got-(90-leg)) > 0.01 {
		t.Errorf("%g deg off its axis, with the leg at %g", got, leg)
	}
	if got := figure(t, f, "part/attachment/A", "rated_load_n"); !alike(got, 1.2*tonne, 1e-8) {
		t.Errorf("at 23 deg it may carry %g N: the rating at 45 deg holds", got)
	}
	f = eyebolts(t, "").facts(t)
	if got, want := labels(lacks(t, f, "part/attachment/A", "rated_load_n")), "attachment A's own rated load at the angle of the pull `rated_at` at #/load/attachments/0"; got != want {
		t.Errorf("waits for %q", got)
	}
	if got := figure(t, f, "part/attachment/A", "marked_load_n"); !alike(got, 3*tonne, 1e-8) {
		t.Errorf("marked %g N", got)
	}
}

// TestInsert: its factors are over the pull on it, and it has no rated load.
func TestInsert(t *testing.T) {
	v := rulesBase(t, "two_legs")
	insert := `{id: A, kind: insert, x: 0 m, y: 0.5 m, z: 1 m, panel: tilt_up, breaking_load: 4 t, hardware_breaking_load: 10 t, concrete_strength: 20000 kPa, concrete_strength_needed: 15000 kPa, hole: 22 mm, thickness: 20 mm}`
	v.set("load/attachments/0", map[string]any(parse(t, insert)))
	f := v.facts(t)
	pull := figure(t, f, "attachment/A", "pull_n")
	for field, t0 := range map[string]float64{"breaking_over_pull_times": 4, "hardware_breaking_over_pull_times": 10} {
		if got, want := figure(t, f, "attachment/A", field), t0*1000*gravity/pull; !alike(got, want, 1e-6) {
			t.Errorf("%s %g, want %g", field, got, want)
		}
	}
	for _, p := range f.Document.Parts {
		if p.Key == "part/attachment/A" {
			t.Error("an insert is judged by a rated load that it does not have")
		}
	}
	f = v.drop("load/mass").facts(t)
	if got := labels(lacks(t, f, "attachment/A", "breaking_over_pull_times")); got != "the load's mass `mass` at #/load" {
		t.Errorf("waits for %q", got)
	}
}

// TestThrust: the horizontal part of a leg's force, W / (2 tan b) of two equal
// legs (statics).
func TestThrust(t *testing.T) {
	f := rulesBase(t, "two_legs").facts(t)
	b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
	want := 2020 * gravity / (2 * math.Tan(b*math.Pi/180))
	for key, field := range map[string]string{"leg/hook/1": "thrust_n", "load": "thrust_n"} {
		if got := figure(t, f, key, field); !alike(got, want, 1e-6) {
			t.Errorf("%s of %s is %g N, want %g", field, key, got, want)
		}
	}
	if got := figure(t, f, "load", "flattest_leg_from_horizontal_deg"); math.Abs(got-b) > 1e-6 {
		t.Errorf("flattest at %g deg", got)
	}
}

// TestStatedAngle: it is compared with the angle computed and changes nothing.
func TestStatedAngle(t *testing.T) {
	plain := rulesBase(t, "two_legs").facts(t)
	f := rulesBase(t, "two_legs").set("rigging/0/legs/0/angle_from_horizontal", "60 deg").facts(t)
	b := figure(t, plain, "leg/hook/1", "angle_from_horizontal_deg")
	if got := figure(t, f, "leg/hook/1", "stated_angle_off_deg"); math.Abs(got-(b-60)) > 1e-6 {
		t.Errorf("off by %g deg, at %g", got, b)
	}
	if a, b := figure(t, plain, "leg/hook/1", "tension_n"), figure(t, f, "leg/hook/1", "tension_n"); a != b {
		t.Errorf("it changes the force from %g to %g N", a, b)
	}
}

// TestContents: what is said, and what is not.
func TestContents(t *testing.T) {
	for _, c := range []struct{ contents, state, hazard string }{
		{"", "not_given", "not_given"},
		{"{state: none}", "none", "none"},
		{"{state: loose, hazardous: true}", "loose", "without_precaution"},
		{"{state: secured, hazardous: true, precaution: drained}", "secured", "with_precaution"},
		{"{state: secured, hazardous: false}", "secured", "none"},
		{"{state: secured}", "secured", "not_given"},
		{"{state: none, hazardous: true}", "none", "without_precaution"},
	} {
		v := rulesBase(t, "two_legs").drop("load/contents")
		if c.contents != "" {
			v.set("load/contents", map[string]any(parse(t, c.contents)))
		}
		l := v.facts(t).Document.Loads[0]
		if l.Contents != c.state || l.Hazard != c.hazard {
			t.Errorf("%s: %s, %s", c.contents, l.Contents, l.Hazard)
		}
	}
}

// TestCenterOutside: measured from the datum corner, to the side on which the
// attachments lie.
func TestCenterOutside(t *testing.T) {
	size := map[string]any{"length": "2 m", "width": "1 m", "height": "1 m"}
	for x, want := range map[string]float64{"1 m": 0, "2 m": 0, "2.5 m": 0.5, "-1 m": 1, "-2.25 m": 2.25} {
		v := rulesBase(t, "two_legs").set("load/size", size).set("load/center_of_gravity/x", x)
		f, _ := v.compute(t)
		if got := figure(t, f, "load", "center_outside_m"); math.Abs(got-want) > 1e-9 {
			t.Errorf("x %s: %g m outside, want %g", x, got, want)
		}
	}
	back := rulesBase(t, "two_legs").set("load/size", size).set("load/center_of_gravity/x", "-1 m").set("load/attachments/0/x", "-2 m").set("load/attachments/1/x", "0 m")
	f, _ := back.compute(t)
	near(t, "inside a load that extends backward", figure(t, f, "load", "center_outside_m"), 0, 1e-9)
}

// TestLaysJoined: right and left in one leg, as soon as two are known to differ.
func TestLaysJoined(t *testing.T) {
	joined := func(lays ...string) tree {
		v := rulesBase(t, "two_legs")
		gear := v["gear"].([]any)
		down := []any{"S1"}
		gear[0].(map[string]any)["lay"] = lays[0]
		if lays[0] == "" {
			delete(gear[0].(map[string]any), "lay")
		}
		for i, lay := range lays[1:] {
			id := fmt.Sprintf("S%d", i+5)
			s := map[string]any{"id": id, "kind": "wire_rope_sling", "length": "0.2 m", "diameter": "14 mm"}
			if lay != "" {
				s["lay"] = lay
			}
			gear = append(gear, s)
			down = append(down, id)
		}
		v["gear"] = gear
		return v.set("rigging/0/legs/0/down", append(down, "K1"))
	}
	for _, c := range []struct {
		lays []string
		want any
	}{
		{[]string{"right_regular", "right_lang"}, "alike"},
		{[]string{"right_regular", "left_regular"}, "unlike"},
		{[]string{"right_regular", ""}, nil},
		{[]string{"right_regular", "", "left_regular"}, "unlike"},
	} {
		f, _ := joined(c.lays...).compute(t)
		got, _ := find(t, f, "leg/hook/1").Field("lays_joined")
		if got != c.want {
			t.Errorf("%v: %v, want %v", c.lays, got, c.want)
		}
	}
}

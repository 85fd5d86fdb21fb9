package compute_test

import (
	"liftlint/internal/hang"
	"math"
	"testing"
)

// gravity is the standard acceleration of free fall (ISO 80000-3, read in SP
// 330), written out so as not to lean on the code under test.
const gravity = 9.80665

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.9g, not %.9g", what, got, want)
	}
}

func TestMassAtTheUpperEndOfItsTolerance(t *testing.T) {
	f := example(t, "pump-skid").facts(t) // 8650 kg, 2 %
	near(t, "mass", figure(t, f, "load", "mass_kg"), 8650, 0)
	near(t, "upper mass", figure(t, f, "load", "mass_upper_kg"), 8823, 1e-6)
	if given, _ := find(t, f, "load").Field("mass_tolerance_given"); given != true {
		t.Errorf("a tolerance of 2 %% is given: %v", given)
	}

	f = example(t, "pump-skid").drop("load/mass_tolerance").facts(t)
	near(t, "upper mass", figure(t, f, "load", "mass_upper_kg"), 8650, 0)
	if got := labels(lacks(t, f, "load", "mass_tolerance_ratio")); got != "the tolerance of the load's mass `mass_tolerance` at #/load" {
		t.Errorf("the tolerance is said to wait for %q", got)
	}
	if given, _ := find(t, f, "load").Field("mass_tolerance_given"); given != false {
		t.Errorf("no tolerance is given: %v", given)
	}
}

// TestMostUsedPart: 6510 lb on two legs by statics. The north leg pulls the
// more, and its padeye is rated lower than its sling and shackle.
func TestMostUsedPart(t *testing.T) {
	f := example(t, "valve-block-us").facts(t)
	// Two legs to points at one height: T1 = W cos b2 / sin(b1 + b2).
	rad := func(leg string) float64 {
		return figure(t, f, "leg/hook/"+leg, "angle_from_horizontal_deg") * math.Pi / 180
	}
	north, south := rad("north"), rad("south")
	pull := 6510 * math.Cos(south) / math.Sin(north+south)
	near(t, "highest share", figure(t, f, "load", "most_used_ratio"), pull/(3.5*2000), 2e-4)
	if part, _ := find(t, f, "load").Field("most_used_part"); part != "NORTH in hook/north" {
		t.Errorf("the most used part is %v", part)
	}

	// Four equal legs: the first of them, whatever the last bits say.
	v := example(t, "filter-vessel")
	f = v.facts(t)
	near(t, "highest share", figure(t, f, "load", "most_used_ratio"), figure(t, f, "part/hook/1/S1", "used_ratio"), 1e-8)
	if part, _ := find(t, f, "load").Field("most_used_part"); part != "S1 in hook/1" {
		t.Errorf("the most used part is %v", part)
	}
	f = v.set("gear/2/tag/rated_load", "3 t").facts(t)
	if part, _ := find(t, f, "load").Field("most_used_part"); part != "S3 in hook/3" {
		t.Errorf("the most used part is %v", part)
	}
}

// TestMostUsedPartWaitsForAll: a part whose share is not known might be the
// one used most.
func TestMostUsedPartWaitsForAll(t *testing.T) {
	f := example(t, "filter-vessel").drop("gear/4/rated_load").drop("load/attachments/1/rated_load").facts(t)
	for _, field := range []string{"most_used_ratio", "most_used_part"} {
		want := "K1's rated load `rated_load` at #/gear/4; attachment B's rated load `rated_load` at #/load/attachments/1"
		if got := labels(lacks(t, f, "load", field)); got != want {
			t.Errorf("%s waits for %q", field, got)
		}
	}
}

// TestHookAndLinkCarryLoadAndRigging: 8823 kg, a link of 9.2 kg, four slings
// of 14 kg and four shackles of 2.6 kg.
func TestHookAndLinkCarryLoadAndRigging(t *testing.T) {
	f := example(t, "pump-skid").facts(t)
	want := (8823 + 9.2 + 4*14 + 4*2.6) * gravity
	near(t, "load on the hook", figure(t, f, "hook/hook", "load_n"), want, 1e-3)
	near(t, "load on the link", figure(t, f, "part/hook/ML1", "load_n"), want, 1e-3)
	near(t, "mass of the rigging", figure(t, f, "hook/hook", "rigging_mass_kg"), 75.6, 1e-9)
	near(t, "share of the link's rating", figure(t, f, "part/hook/ML1", "used_ratio"), want/(17000*gravity), 1e-8)
}

// TestUnusedGearIsNoRigging: what hangs on no leg adds nothing to the hook.
func TestUnusedGearIsNoRigging(t *testing.T) {
	v := example(t, "pump-skid")
	v.set("rigging/0", map[string]any{"from": "hook", "legs": v["rigging"].([]any)[0].(map[string]any)["legs"]})
	f := v.facts(t)
	near(t, "mass of the rigging", figure(t, f, "hook/hook", "rigging_mass_kg"), 66.4, 1e-9)
	if uses, _ := find(t, f, "gear/ML1").Field("uses"); uses != 0 {
		t.Errorf("the link out of use is used %v times", uses)
	}
}

// TestAttachmentCarriesAllItsLegs: two equal legs to one point pull on it with
// the force of both, and it is judged once.
func TestAttachmentCarriesAllItsLegs(t *testing.T) {
	v := example(t, "valve-block-us")
	v.set("load/center_of_gravity", map[string]any{"x": "1 ft", "y": "1 ft 3 in", "z": "1 ft"})
	v.set("rigging/0/legs/1/end/at", "NORTH").set("gear/1/length", "9 ft")
	f := v.facts(t)
	half := figure(t, f, "leg/hook/north", "tension_n")
	weight := figure(t, f, "load", "mass_upper_kg") * gravity
	near(t, "force of one of two plumb legs", half, weight/2, weight*1e-6)
	near(t, "force it is judged by, since it may come to carry all", figure(t, f, "leg/hook/north", "tension_judged_n"), weight, weight*1e-4)
	for key, field := range map[string]string{"attachment/NORTH": "pull_n", "part/attachment/NORTH": "load_n"} {
		near(t, field+" of "+key, figure(t, f, key, field), weight, weight*1e-6)
	}
	if where, _ := find(t, f, "part/attachment/NORTH").Field("where"); where != "hook/north and hook/south" {
		t.Errorf("the attachment is said to work in %v", where)
	}
	rated := 7000 * 0.45359237 * gravity // 3-1/2 short tons; the pound: NIST SP 811
	near(t, "share of its rating", figure(t, f, "part/attachment/NORTH", "used_ratio"), weight/rated, 1e-6)
	near(t, "pull on the unused point", figure(t, f, "attachment/SOUTH", "pull_n"), 0, 0)
}

func TestLoadThatTurnsOver(t *testing.T) {
	f, troubles := example(t, "valve-block-us").set("load/center_of_gravity/z", "5 ft").compute(t)
	if len(troubles) > 0 {
		t.Errorf("a load that turns over is for a rule to report, not a trouble: %v", troubles)
	}
	if hangs, _ := find(t, f, "load").Field("hangs"); hangs != "points_below_center_of_gravity" {
		t.Errorf("it hangs %v", hangs)
	}
	for _, key := range []string{"part/hook/north/S1", "part/attachment/NORTH"} {
		if got := labels(lacks(t, f, key, "used_ratio")); got != "the load turns over" {
			t.Errorf("%s has no share because %q", key, got)
		}
	}
	f, _ = example(t, "pump-skid").set("load/center_of_gravity/z", "9 m").compute(t)
	if hangs, _ := find(t, f, "load").Field("hangs"); hangs != "overturns" {
		t.Errorf("it hangs %v", hangs)
	}
}

func TestTroubles(t *testing.T) {
	for _, c := range []struct {
		name      string
		plan      tree
		id, place string
		says      string
	}{
		{"short legs", shortLegs(t),
			hang.OutOfReach, "/rigging/0/legs/0", "too short to reach"},
		{"a thousand times the mass", example(t, "pump-skid").set("load/mass", "8650 t"),
			hang.OutOfReach, "/rigging/0/legs/0", "the slings are too thin for this mass, or one of the two is not as written"},
		{"no mass to speak of", example(t, "pump-skid").set("load/mass", "0.0001 kg"),
			hang.NoBalance, "/rigging/0", "can't be computed"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, troubles := c.plan.compute(t)
			if len(troubles) == 0 {
				t.Fatal("there is no trouble")
			}
			got := troubles[0]
			if got.ID != c.id || got.At != c.place || !contains(got.Message, c.says) {
				t.Errorf("%s at %s: %s", got.ID, got.At, got.Message)
			}
			if why := labels(lacks(t, f, "load", "hangs")); why != "no position was found in which the load hangs" {
				t.Errorf("hangs is absent because %q", why)
			}
		})
	}
}

// shortLegs end short of the corners: 2.1 m, and 2.80 m from the middle to each.
func shortLegs(t testing.TB) tree {
	v := example(t, "pump-skid")
	for _, g := range []string{"1", "2", "3", "4"} {
		v.set("gear/"+g+"/length", "2 m")
	}
	return v
}

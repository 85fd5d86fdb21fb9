package compute_test

import (
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// TestWhatGathers: two legs of 14 mm rope with soft eyes on whatever they hang
// from.
func TestWhatGathers(t *testing.T) {
	for _, c := range []struct {
		by   []string
		key  string
		what string
		room float64
		name string
	}{
		{nil, "gather/hook", "hook", 0.070, "the crane hook"},
		{[]string{"ML9"}, "gather/hook/ML9", "link", 0.140, "ML9"}, // its width where the legs bear
		{[]string{"KU"}, "gather/hook/KU", "bow", 0.092, "KU's bow"},
		{[]string{"ML8", "KL"}, "gather/hook/KL", "pin", 0.057, "KL's pin"},
	} {
		v := withCollectors(rulesBase(t, "two_legs"))
		if c.by != nil {
			v.by(c.by...)
		}
		f := v.facts(t)
		if n := len(f.Document.Gathers); n != 1 {
			t.Errorf("%v: %d gathers", c.by, n)
		}
		says(t, f, c.key, "what", c.what)
		says(t, f, c.key, "name", c.name)
		says(t, f, c.key, "legs", 2)
		near(t, "room", figure(t, f, c.key, "room_m"), c.room, 1e-12)
		near(t, "needs", figure(t, f, c.key, "needs_m"), 0.028, 1e-12)
		near(t, "filled", figure(t, f, c.key, "filled_ratio"), 0.028/c.room, 1e-8)
		_, known := find(t, f, c.key).Field("on_pin")
		if onShackle := c.what == "bow" || c.what == "pin"; known != onShackle {
			t.Errorf("%v: on_pin is known: %v", c.by, known)
		} else if onShackle {
			says(t, f, c.key, "on_pin", c.what == "pin")
		}
	}
}

func TestShackleThatGathersOfUnknownEnds(t *testing.T) {
	f := withCollectors(rulesBase(t, "two_legs")).by("KX").facts(t)
	says(t, f, "gather/hook/KX", "what", "shackle")
	for _, field := range []string{"on_pin", "room_m", "filled_ratio"} {
		if got := labels(lacks(t, f, "gather/hook/KX", field)); got != "KX's pin: at its upper or lower end `pin` at #/gear/6" {
			t.Errorf("%s waits for %q", field, got)
		}
	}
}

// TestPatternOfAShackleThatGathers: a bow, a dee, or one that is asked for; nothing else
// has one.
func TestPatternOfAShackleThatGathers(t *testing.T) {
	v := withCollectors(rulesBase(t, "two_legs")).by("KU")
	says(t, v.facts(t), "gather/hook/KU", "pattern", "bow")
	at := ""
	for i, g := range v["gear"].([]any) {
		if item, ok := g.(map[string]any); ok && item["id"] == "KU" {
			at = "gear/" + strconv.Itoa(i)
		}
	}
	says(t, v.set(at+"/pattern", "dee").facts(t), "gather/hook/KU", "pattern", "dee")
	if got := labels(lacks(t, v.drop(at+"/pattern").facts(t), "gather/hook/KU", "pattern")); got != "the pattern of KU: bow or dee `pattern` at #/"+at {
		t.Errorf("waits for %q", got)
	}
}

// TestBridleGathersTwice: the links on the master link, the legs on each link.
// Its eyes have thimbles: each takes one and a half times the rope.
func TestBridleGathersTwice(t *testing.T) {
	f := rulesBase(t, "bridle").facts(t)
	says(t, f, "gather/hook/ML1", "legs", 4)
	says(t, f, "gather/hook/ML1", "links", 2)
	near(t, "on the master link", figure(t, f, "gather/hook/ML1", "needs_m"), 2*0.022, 1e-12)
	for _, id := range []string{"IL1", "IL2"} {
		says(t, f, "gather/hook/"+id, "legs", 2)
		says(t, f, "gather/hook/"+id, "links", 0)
		near(t, "on "+id, figure(t, f, "gather/hook/"+id, "needs_m"), 2*1.5*0.018, 1e-12)
		near(t, "room in "+id, figure(t, f, "gather/hook/"+id, "room_m"), 0.075, 1e-12)
	}
	f = parkTwo(rulesBase(t, "bridle")).facts(t)
	says(t, f, "gather/hook/ML1", "links", 2)
	says(t, f, "gather/hook/IL1", "legs", 1) // and the parked leg beside it
}

// TestWidthOfWhatGathers: shackles count by their bow, or twice their pin for
// the ears beside it; a socket's width no plan gives.
func TestWidthOfWhatGathers(t *testing.T) {
	v := withCollectors(rulesBase(t, "two_legs")).by("ML8").set("rigging/0/legs/0/down", []any{"KL", "S1", "K1"})
	near(t, "bow and rope", figure(t, v.facts(t), "gather/hook/ML8", "needs_m"), 0.035+0.014, 1e-12)
	v.set("rigging/0/legs/1/down", []any{"KU", "S2", "K2"})
	near(t, "bow and ears", figure(t, v.facts(t), "gather/hook/ML8", "needs_m"), 0.035+2*0.038, 1e-12)
	v.set("rigging/0/legs/1/down", []any{"S2", "K2"}).set("gear/1/eyes/upper", map[string]any{"kind": "socket", "width": "30 mm"})
	if got := labels(lacks(t, v.facts(t), "gather/hook/ML8", "needs_m")); got != "how wide the socket of S2 is, the plan does not say" {
		t.Errorf("it waits for %q", got)
	}
	f := v.set("gear/1/eyes/upper", map[string]any{}).drop("gear/1/diameter", "gear/5/bow_diameter").facts(t)
	want := "the section of KL's bow `bow_diameter` at #/gear/5; S2's diameter `diameter` at #/gear/1"
	if got := labels(lacks(t, f, "gather/hook/ML8", "filled_ratio")); got != want {
		t.Errorf("it waits for %q", got)
	}
}

// TestIncludedAngle: for legs that meet above the middle it is twice the angle
// of one from vertical; of two links, that of the pulls of their pairs.
func TestIncludedAngle(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		length := rapid.IntRange(1200, 6000).Draw(rt, "sling, mm")
		v := withCollectors(rulesBase(t, "two_legs")).by("KU").set("gear/0/length", meters(length)).set("gear/1/length", meters(length))
		f := v.facts(t)
		vertical := 90 - figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
		if got := figure(t, f, "gather/hook/KU", "included_angle_deg"); math.Abs(got-2*vertical) > 1e-6 {
			rt.Fatalf("%g deg between legs at %g deg from vertical", got, vertical)
		}
	})
	f := rulesBase(t, "bridle").facts(t)
	// Pairs S1, S4 and S2, S3 lie 3 m apart; their links hang in the lines from the
	// master link to the middles between their points, and take 150 mm of them.
	height := figure(t, f, "load", "hook_above_points_m") - 0.27
	slant := math.Hypot(1.5, height)
	near(t, "between the links", figure(t, f, "gather/hook/ML1", "included_angle_deg"), 2*math.Atan(1.5/height)*180/math.Pi, 1e-3)
	near(t, "between legs of a link", figure(t, f, "gather/hook/IL1", "included_angle_deg"), 2*math.Atan(1/(slant-0.15))*180/math.Pi, 1e-3)
}

func TestIncludedAngleWaitsForThePosition(t *testing.T) {
	f := rulesBase(t, "two_legs").drop("load/mass").facts(t)
	if got := labels(lacks(t, f, "gather/hook", "included_angle_deg")); got != "the load's mass `mass` at #/load" {
		t.Errorf("it waits for %q", got)
	}
}

// TestOneLegGathersNothing.
func TestOneLegGathersNothing(t *testing.T) {
	v := rulesBase(t, "two_legs").set("rigging/0/legs", []any{map[string]any{"down": []any{"S1", "K1"}, "end": map[string]any{"kind": "to", "at": "A"}}})
	f, _ := v.compute(t)
	if n := len(f.Document.Gathers); n != 0 {
		t.Errorf("%d gathers", n)
	}
}

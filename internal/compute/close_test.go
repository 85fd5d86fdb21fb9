package compute_test

import (
	"math"
	"os"
	"testing"
)

// TestLegsInOnePlaneWaitForDiameters: with three points in a row stiffness
// decides, so that a rope of unknown diameter leaves the forces unknown.
func TestLegsInOnePlaneWaitForDiameters(t *testing.T) {
	text, err := os.ReadFile("testdata/three-in-a-row.lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	row := func() tree { return parse(t, string(text)) }
	f := row().facts(t)
	if split, _ := find(t, f, "leg/hook/1").Field("split"); split != "settled_by_stiffness" {
		t.Errorf("three legs in one plane are %v", split)
	}
	figure(t, f, "leg/hook/1", "tension_bound_n")
	f = row().drop("gear/1/diameter").facts(t)
	if got := labels(lacks(t, f, "leg/hook/1", "tension_n")); got == "" {
		t.Error("the forces are known without a diameter")
	}
}

// TestLegsToOnePointCountOnce: of two legs to one point one may carry for
// both, so that they count as one.
func TestLegsToOnePointCountOnce(t *testing.T) {
	f := example(t, "pump-skid").set("load/center_of_gravity/z", "0.1 m").set("load/center_of_gravity/x", "3.1 m").set("rigging/0/legs/1/end/at", "A").set("rigging/0/legs/3/end/at", "C").facts(t)
	b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg") * math.Pi / 180
	want := 8823 * gravity / (2 * math.Sin(b))
	near(t, "counted force", figure(t, f, "leg/hook/1", "tension_counted_n"), want, 1e-3*want)
}

// TestHarderServiceHoldsNoLonger: a next due day far off does not stretch the
// interval of normal service.
func TestHarderServiceHoldsNoLonger(t *testing.T) {
	f := example(t, "pump-skid").set("gear/1/inspection/service", "special").
		set("gear/1/inspection/date", "2020-01-10").set("gear/1/inspection/next_due", "2099-01-01").facts(t)
	if due, _ := find(t, f, "gear/S1").Field("inspection.due"); due != "2021-01-10" {
		t.Errorf("due on %v", due)
	}
}

// TestSteepLegsAreSettledByStatics: three legs that hang steeply spread little
// and are no more in one plane for that.
func TestSteepLegsAreSettledByStatics(t *testing.T) {
	text, err := os.ReadFile("testdata/three-in-a-row.lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	row := func() tree {
		return parse(t, string(text)).
			set("load/attachments/0/x", "0.7 m").set("load/attachments/0/y", "-0.3 m").
			set("load/attachments/1/x", "1.7 m").set("load/attachments/1/y", "-0.3 m").
			set("load/attachments/2/x", "1.2 m").set("load/attachments/2/y", "0.6 m").
			set("gear/1/length", "8 m").set("gear/2/length", "8 m").set("gear/3/length", "8 m")
	}
	f := row().facts(t)
	if angle := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg"); angle < 83 {
		t.Fatalf("the legs hang at %g deg: not steep", angle)
	}
	if split, _ := find(t, f, "leg/hook/1").Field("split"); split != "settled_by_statics" {
		t.Errorf("steep legs are %v", split)
	}
	f = row().set("load/attachments/0/y", "0 m").set("load/attachments/1/y", "0 m").set("load/attachments/2/y", "10 mm").facts(t)
	if split, _ := find(t, f, "leg/hook/1").Field("split"); split != "settled_by_stiffness" {
		t.Errorf("steep legs to points 10 mm out of a row are %v", split)
	}
}

// TestLinkIsNotHeldUnderWithoutMasses: without the mass of the rigging the
// load on the link is a lower bound, which can prove it over and never under.
func TestLinkIsNotHeldUnderWithoutMasses(t *testing.T) {
	light := example(t, "pump-skid").drop("gear/1/mass").facts(t)
	if got := labels(lacks(t, light, "part/hook/ML1", "load_n")); got != "S1's mass `mass` at #/gear/1" {
		t.Errorf("the load on the link waits for %q", got)
	}
	lacks(t, light, "part/hook/ML1", "used_ratio")
	heavy := example(t, "pump-skid").drop("gear/1/mass").set("load/mass", "20 t").facts(t)
	if ratio := figure(t, heavy, "part/hook/ML1", "used_ratio"); ratio <= 1 {
		t.Errorf("20 t on a link for 17 t is used to %g", ratio)
	}
}

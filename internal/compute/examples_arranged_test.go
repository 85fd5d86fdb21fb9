package compute_test

import (
	"math"
	"testing"
)

// The figures of the arranged examples, worked by hand. What is written here is
// statics with rigid ropes; the program's ropes stretch by some thousandths of
// their length, which the tolerances leave room for.

// TestWallPanel: 7.8 t and 5 % are 8190 kg. The drops hang plumb and midway about
// the center of gravity (1.6 m either side of 2.75 m), so each carries half:
// 8190 g / 2 = 40.16 kN. Above the beam come its 310 kg and the 34 kg of drops and
// shackles below it. A top leg is 3.1 m of sling and 0.108 m of shackle for 1.6 m
// of half span: acos(1.6 / 3.208) = 60.1 deg from horizontal.
func TestWallPanel(t *testing.T) {
	f := example(t, "wall-panel-reviewed").facts(t)
	near(t, "drop", figure(t, f, "leg/SB1.low_left/1", "tension_n"), 8190*gravity/2, 20)
	w, b := (8190+310+34)*gravity, math.Acos(1.6/3.208)
	near(t, "top leg", figure(t, f, "leg/hook/1", "tension_n"), w/(2*math.Sin(b)), 100)
	near(t, "squeeze of the beam", figure(t, f, "beam/SB1", "compression_n"), w/(2*math.Tan(b)), 150)
	near(t, "insert", figure(t, f, "attachment/L", "breaking_over_pull_times"), 22000/(8190.0/2), 0.1)
}

// TestWallPanelTilts: as first drawn the drop on the right is 0.25 m short of the
// one on the left over 3.2 m, and the center of gravity lies 0.25 m left of the
// middle and 1.65 m below the inserts. On a beam that stayed level between plumb
// drops the panel would lie at asin(0.25 / 3.2) = 4.5 deg, right end up, which
// swings its center of gravity by 1.65 sin 4.5 deg = 0.13 m toward the middle: not
// enough. So the beam tips, left end down, until moments balance about the hook.
//
// For a beam tipped by a: its pins lie 1.6 m either side, the upper ones h below the
// link and the lower ones 0.3 m below those, and the drops stay plumb within a
// quarter of a degree. Moments of the drops about the link, and of the panel's
// weight about its inserts, are L (p - q) = R (p + q) with p = 1.6 cos a and
// q = (h + 0.3) sin a, less what the beam's own 310 kg add, and
// (L - R) s = 2 (L + R) u with the panel's own span s = 3.2 cos c in plan, and u
// the way of its center of gravity from midway, 0.25 cos c - 1.65 sin c, where
// 3.2 sin c = 3.2 sin a + 0.25.
func TestWallPanelTilts(t *testing.T) {
	f := example(t, "wall-panel").facts(t)
	panel, _ := wallPanelTilts(0.25)
	near(t, "tilt of the panel", figure(t, f, "load", "tilt_deg"), panel*180/math.Pi, 0.2)
	_, beam := wallPanelTilts(0.25 + 0.02) // with the center of gravity at the end of its tolerance
	near(t, "tilt of the beam", figure(t, f, "beam/SB1", "tilt_deg"), beam*180/math.Pi, 0.2)
}

func wallPanelTilts(off float64) (panelRad, beamRad float64) {
	h := math.Sqrt(2.058*2.058 - 1.6*1.6)
	out := func(a float64) float64 { // moment on the hook, over the weights
		c := math.Asin(math.Sin(a) + 0.25/3.2)
		u := off*math.Cos(c) - 1.65*math.Sin(c)
		left := 0.5 + u/(3.2*math.Cos(c)) // share of the left drop
		p, q := 1.6*math.Cos(a), (h+0.3)*math.Sin(a)
		return 8224*(left*(p-q)-(1-left)*(p+q)) - 310*(h+0.15)*math.Sin(a)
	}
	low, high := 0.0, 0.2
	for range 60 {
		if mid := (low + high) / 2; out(mid) > 0 {
			low = mid
		} else {
			high = mid
		}
	}
	return math.Asin(math.Sin(low) + 0.25/3.2), low
}

// TestColumn: 2.4 t and 3 % are 2472 kg on one leg, 24.24 kN. Its center of gravity
// is 3.2 m below the choke, which holds it at the surface, 0.173 m from the axis at
// the rope's middle; it may lie 0.05 m higher and 0.05 m aside two ways: it hangs
// atan(0.223 / 3.15) = 4.05 deg from plumb then, of which 3 deg are meant, and
// atan(0.05 / 3.15) = 0.91 deg across that.
func TestColumn(t *testing.T) {
	f := example(t, "column-reviewed").facts(t)
	near(t, "leg", figure(t, f, "leg/hook/1", "tension_n"), 2472*gravity, 20)
	near(t, "tilt", figure(t, f, "load", "tilt_at_worst_deg"), math.Hypot(math.Atan(0.223/3.15)*180/math.Pi-3, math.Atan(0.05/3.15)*180/math.Pi), 0.05)
}

// TestColumnTurnsOver: as first drawn the choke is 0.7 m above the center of
// gravity: it hangs at atan(0.173 / 0.7) = 14 deg, held at the surface. That may be
// 0.1 m higher and 0.1 m aside two ways: it would hang at
// atan(hypot(0.273, 0.1) / 0.6) = 26 deg, and that is no column held upright.
func TestColumnTurnsOver(t *testing.T) {
	f := example(t, "column").facts(t)
	for field, want := range map[string]string{"hangs": "steady", "hangs_at_worst": "overturns"} {
		if got, _ := find(t, f, "load").Field(field); got != want {
			t.Errorf("%s is %v, want %s", field, got, want)
		}
	}
}

// TestGirder: 22 t and 2 % are 22440 kg between lugs 18 m apart; with the center of
// gravity 8.6 m from the west one that carries (18 - 8.6) / 18. It lies 1 m below
// the lugs, so that the higher end takes over W 1/18 tan 3 deg on the slope.
func TestGirder(t *testing.T) {
	f := example(t, "girder-reviewed").facts(t)
	w := 22440 * gravity
	west, slope := w*(18-8.6)/18, w/18*math.Tan(3*math.Pi/180)
	near(t, "west, level", figure(t, f, "position/level/west/1", "tension_n"), west, 30)
	near(t, "west, west end higher", figure(t, f, "position/west end higher/west/1", "tension_n"), west+slope, 50)
	near(t, "east, east end higher", figure(t, f, "position/east end higher/east/1", "tension_n"), w-west+slope, 50)
}

// TestGirderLeans: as first drawn the east boom head stands 2 m beyond its lug, and
// both slings lean out in line with their hoist ropes, with level pulls that are
// alike: the westward one of the west leg is that of the east leg. Over 10 m of rope
// and 6.178 m and 6.149 m of leg their level ways add up to 2 m. A center of gravity
// 0.1 m further west, and the slope, put another W 0.1/18 and W 1/18 tan 3 deg on the
// west leg.
func TestGirderLeans(t *testing.T) {
	f := example(t, "girder").facts(t)
	w := 22440 * gravity
	west := w * (18 - 8.6) / 18
	way := func(level float64) float64 {
		return 16.178*math.Sin(math.Atan(level/west)) + 16.149*math.Sin(math.Atan(level/(w-west)))
	}
	low, high := 0.0, w
	for range 60 {
		if mid := (low + high) / 2; way(mid) < 2 {
			low = mid
		} else {
			high = mid
		}
	}
	angle := math.Atan(west/low) * 180 / math.Pi
	near(t, "west leg", figure(t, f, "position/level/west/1", "angle_from_horizontal_deg"), angle, 0.3)
	worst := math.Hypot(west+w*(0.1+math.Tan(3*math.Pi/180))/18, low)
	near(t, "west at worst", figure(t, f, "leg/west/1", "tension_at_worst_n"), worst, 0.005*worst)
}

// TestTransformer: 60 t and 3 % are 61800 kg on four legs alike. A grommet of 6 m
// round reaches 3 m, and its shackle 0.26 m, to a padeye that is
// hypot(1.5, 1.2) = 1.921 m aside: acos(1.921 / 3.26) = 53.9 deg from horizontal. A
// quarter of the weight as computed, a third as judged.
func TestTransformer(t *testing.T) {
	f := example(t, "transformer-reviewed").facts(t)
	b := math.Acos(math.Hypot(1.5, 1.2) / 3.26)
	up := 61800 * gravity / math.Sin(b)
	near(t, "leg as computed", figure(t, f, "leg/hook/1", "tension_n"), up/4, 0.005*up)
	near(t, "leg as judged", figure(t, f, "leg/hook/1", "tension_judged_n"), up/3, 0.005*up)
}

// TestTransformerOnTwo: as first drawn the doubled grommet of 11.4 m reaches
// 2.85 m where the others reach 2.9 m, so the load hangs on it and on the one
// across from it: two legs of 3.11 and 3.16 m, 3.842 m apart, to points at about
// one height: T = W cos(other) / sin(both) (statics).
func TestTransformerOnTwo(t *testing.T) {
	f := example(t, "transformer").facts(t)
	const short, long, apart = 3.11, 3.16, 3.842
	angle := func(leg, other float64) float64 {
		return math.Acos((leg*leg + apart*apart - other*other) / (2 * leg * apart))
	}
	s, l := angle(short, long), angle(long, short)
	w := 61800 * gravity
	near(t, "doubled grommet", figure(t, f, "leg/hook/4", "tension_n"), w*math.Cos(l)/math.Sin(s+l), 0.015*w)
	near(t, "across from it", figure(t, f, "leg/hook/2", "tension_n"), w*math.Cos(s)/math.Sin(s+l), 0.015*w)
	near(t, "beside it", figure(t, f, "leg/hook/1", "tension_n"), 0, 1)
}

// TestVessel: 34 t and 2 % are 34680 kg. From the head padeyes the center of
// gravity is 6.8 m along the axis and on it, the tail padeye 12.5 m along and 1.4 m
// above it. At the pitch a the level ways are 6.8 cos a and 12.5 cos a + 1.4 sin a:
// the tail carries their ratio, 54.4 % level, and nothing upright. Upright each
// head leg pulls half, 1.35 m from the beam's middle, and its sling and two shackles
// of 72 kg together hang there too: (W/2 + 72 kg g) 1.35 m = 230.5 kN m.
func TestVessel(t *testing.T) {
	w := 34680 * gravity
	tail := func(deg float64) float64 {
		s, c := math.Sincos(deg * math.Pi / 180)
		return w * 6.8 * c / (12.5*c + 1.4*s)
	}
	f := example(t, "vessel-reviewed").facts(t)
	near(t, "tail, level", figure(t, f, "position/level/tail/1", "tension_n"), tail(0), 50)
	near(t, "tail, turned by 45 deg", figure(t, f, "position/turning at 45 deg/tail/1", "tension_n"), tail(45), 100)
	near(t, "bending of the beam", figure(t, f, "beam/LB1", "bending_nm"), (w/2+72*gravity)*1.35, 300)
}

// TestVesselTail: as first drawn the tail sling, rated for 18.5 t, is over its rated
// load while the vessel is level, and in no other phase; the legs below a beam of
// 2.2 m for padeyes 2.7 m apart lean by asin(0.25 / 2.356), 2 m of sling and two
// shackles of 0.178 m.
func TestVesselTail(t *testing.T) {
	f := example(t, "vessel").facts(t)
	rated := 18500 * gravity
	for phase, over := range map[string]bool{"level": true, "turning at 15 deg": false, "turning at 30 deg": false, "turning at 60 deg": false} {
		if pull := figure(t, f, "position/"+phase+"/tail/1", "tension_n"); pull > rated != over {
			t.Errorf("%s: %.0f N on a sling rated for %.0f N", phase, pull, rated)
		}
	}
	near(t, "lean", figure(t, f, "leg/LB1.left/1", "angle_from_horizontal_deg"), 90-math.Asin(0.25/2.356)*180/math.Pi, 0.1)
}

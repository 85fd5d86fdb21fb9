package mechanics

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// Exact values of the units used by the sources (NIST SP 811, appendix B).
const (
	poundN = 4.4482216152605
	footM  = 0.3048
	inchM  = 0.0254
)

// readPublished gives the rows of a data file as maps from its header.
func readPublished(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../testdata/published/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, rec := range all[1:] {
		row := map[string]string{}
		for i, h := range all[0] {
			row[h] = rec[i]
		}
		if row["source"] == "" || row["basis"] == "" {
			t.Fatalf("%s: a row names no source or basis: %v", name, rec)
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		t.Fatalf("%s holds no rows", name)
	}
	return rows
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// inputs reads "name_unit=value ..." and turns lengths and weights to SI.
func inputs(t *testing.T, s string) map[string]float64 {
	t.Helper()
	in := map[string]float64{"gravity_m_s2": gravity}
	for _, f := range strings.Fields(s) {
		k, v, _ := strings.Cut(f, "=")
		x := number(t, v)
		for unit, si := range map[string]float64{"_lbf": poundN, "_n": 1, "_ft": footM, "_in": inchM, "_mm": 1e-3} {
			if name, ok := strings.CutSuffix(k, unit); ok {
				k, x = name, x*si
			}
		}
		in[k] = x
	}
	if _, ok := in["mass_kg"]; !ok {
		in["mass_kg"] = in["weight"] / in["gravity_m_s2"]
	}
	return in
}

// rigging builds the arrangement of a row. Lines are stiff enough that their
// stretch is far below what the sources print.
func rigging(t *testing.T, arrangement string, in map[string]float64) Model {
	t.Helper()
	ea := 1e6 * in["mass_kg"]
	switch arrangement {
	case "level legs":
		return levelLegs(in, ea)
	case "corner legs":
		return fitted(in["mass_kg"], rectangle(in["length"], in["width"], -0.1), in["height"]-0.1, ea)
	case "two cables":
		return twoCables(in, ea)
	}
	t.Fatalf("unknown arrangement %q", arrangement)
	return Model{}
}

// levelLegs hangs a load under legs of one angle, spread evenly around the
// center of gravity, which stands 0.1 m below the points. Plumb legs come from
// a hook each.
func levelLegs(in map[string]float64, ea float64) Model {
	n, angle := int(in["legs"]), in["angle_from_horizontal_deg"]*math.Pi/180
	if in["height"] > 0 {
		angle = math.Asin(in["height"] / in["length"])
	}
	radius := 1.0
	if in["spacing"] > 0 {
		radius = in["spacing"] / 2
	}
	points := make([]r3.Vec, n)
	for i := range points {
		a := 2 * math.Pi * float64(i) / float64(n)
		points[i] = vec(radius*math.Cos(a), radius*math.Sin(a), 0.1)
	}
	if angle < math.Pi/2-1e-9 {
		return fitted(in["mass_kg"], points, 0.1+radius*math.Tan(angle), ea)
	}
	m := hung(in["mass_kg"], points, []float64{3, 3}, ea)
	for i, p := range points {
		m.Lines[i].From = Hook(vec(p.X, p.Y, 10))
	}
	return m
}

// twoCables hangs a weight that is all but a point from two hooks.
func twoCables(in map[string]float64, ea float64) Model {
	l, r := in["left_deg"]*math.Pi/180, in["right_deg"]*math.Pi/180
	at := vec(0, 0, 0.001)
	return Model{
		Bodies: []Body{{Name: "weight", MassKg: in["mass_kg"]}},
		Lines: []Line{
			{Name: "left", From: Hook(vec(-2*math.Cos(l), 0, 2*math.Sin(l))), To: Anchor{0, at}, LengthM: 2, StiffnessN: ea},
			{Name: "right", From: Hook(vec(3*math.Cos(r), 0, 3*math.Sin(r))), To: Anchor{0, at}, LengthM: 3, StiffnessN: ea},
		},
	}
}

func TestPublishedTensions(t *testing.T) {
	for _, row := range readPublished(t, "leg-tensions.csv") {
		t.Run(row["case"], func(t *testing.T) {
			in := inputs(t, row["inputs"])
			m := rigging(t, row["arrangement"], in)
			r, err := Solve(m, Options{GravityMS2: in["gravity_m_s2"]})
			if err != nil || r.Verdict != Steady {
				t.Fatalf("%v %v", err, r)
			}
			b := r.Balance
			force := map[string]float64{"lbf": poundN, "N": 1, "kgf": gravity}[row["unit"]]
			var got float64
			switch row["quantity"] {
			case "tension", "left tension":
				got = b.Lines[0].TensionN / force
			case "right tension":
				got = b.Lines[1].TensionN / force
			case "load factor":
				got = b.Lines[0].TensionN / (in["mass_kg"] * gravity / in["legs"])
			case "length":
				got = m.Lines[0].LengthM * (1 + b.Lines[0].Strain) * 1000
			case "angle":
				got = b.Lines[0].AngleFromHorizontalDeg
			default:
				t.Fatalf("unknown quantity %q", row["quantity"])
			}
			near(t, row["quantity"], got, number(t, row["answer"]), number(t, row["rounding"])/2)
		})
	}
}

// A bridle's rated load at an angle is the load that brings each leg to the
// rating of a single one.
func TestPublishedChainBridles(t *testing.T) {
	for _, row := range readPublished(t, "chain-bridles.csv") {
		in := inputs(t, "mass_kg=1000 legs="+row["legs"]+" angle_from_horizontal_deg="+row["angle_from_horizontal_deg"])
		b := steady(t, levelLegs(in, 1e9))
		rated := number(t, row["single_leg_lb"]) * 1000 * gravity / b.Lines[0].TensionN
		near(t, row["size_in"]+" of "+row["legs"]+" legs", rated, number(t, row["rated_load_lb"]), number(t, row["rounding"])/2+1e-4*rated)
	}
}

// University statics textbook problem (read): 500 kg, lugs 3.0 m apart, at most 3.5 kN
// a leg, g 9.81 m/s2. The legs stand at 44.48 deg from horizontal at the flattest, and
// are then 2.10 m long (computed).
func TestPublishedFlattestAngle(t *testing.T) {
	legs := func(deg float64) (*Balance, Model) {
		in := map[string]float64{"mass_kg": 500, "legs": 2, "spacing": 3, "angle_from_horizontal_deg": deg}
		m := levelLegs(in, 1e10)
		r, err := Solve(m, Options{GravityMS2: 9.81})
		if err != nil || r.Verdict != Steady {
			t.Fatalf("%v %+v", err, r)
		}
		return r.Balance, m
	}
	lo, hi := 30.0, 60.0
	for range 40 {
		mid := (lo + hi) / 2
		if b, _ := legs(mid); b.Lines[0].TensionN > 3500 {
			lo = mid
		} else {
			hi = mid
		}
	}
	near(t, "angle", hi, 44.48, 0.01)
	_, m := legs(hi)
	near(t, "length", m.Lines[0].LengthM, 2.10, 0.005)
}

// Two printed answers that statics contradicts. A coursework page (read) hangs a
// 1,200 lb beam on cables of 1,500 lb as if another angle than 23.58 deg would do;
// a Navy page (read) gives an inclined single basket the factor 4, where its two
// parts lift at most twice what one part bears.
func TestPrintedAnswersThatStaticsContradicts(t *testing.T) {
	for _, c := range []struct {
		deg   float64
		bears bool
	}{{23.57, false}, {23.59, true}} {
		in := inputs(t, "weight_lbf=1200 legs=2")
		in["angle_from_horizontal_deg"] = c.deg
		b := steady(t, levelLegs(in, 1e10))
		if got := b.Lines[0].TensionN <= 1500*poundN; got != c.bears {
			t.Errorf("at %g deg: %g lbf", c.deg, b.Lines[0].TensionN/poundN)
		}
	}
	for _, height := range []float64{0.3, 1, 10} {
		m := Model{Bodies: []Body{{Name: "pipe", MassKg: 1000, CenterOfGravity: vec(0, 0, -0.2)}}}
		hook, long := Hook(vec(0, 0, 20)), math.Hypot(height, 0.25)
		m.Lines = []Line{rope("basket", 2*long, 1e9, hook, Anchor{0, vec(0, -0.25, 0)}, Anchor{0, vec(0, 0.25, 0)}, hook)}
		m.Lines[0].Grips = true
		b := steady(t, m)
		factor := 1000 * gravity / b.Lines[0].TensionN
		near(t, "factor", factor, 2*height/long, 1e-3)
		if factor > 2 {
			t.Errorf("factor %g", factor)
		}
	}
}

package mechanics

import "math"

// rope is a line through all the anchors in turn, two to a run.
func rope(name string, lengthM, ea float64, anchors ...Anchor) Line {
	l := Line{Name: name, From: anchors[0], To: anchors[1], LengthM: lengthM, StiffnessN: ea}
	for i := 2; i < len(anchors); i += 2 {
		l.Further = append(l.Further, Run{anchors[i], anchors[i+1]})
	}
	return l
}

// ringAndSheave hangs a load of 1 t by four legs from a ring, and the ring by a
// link from a sheave block, whose rope runs between two hooks.
func ringAndSheave() Model {
	m := Model{Bodies: []Body{{Name: "block", MassKg: 20, Point: true}, {Name: "ring", MassKg: 5, Point: true}, {Name: "load", MassKg: 1000}}}
	m.Lines = []Line{
		rope("rope", 9, 1e7, Hook(vec(-3, 0, 10)), Anchor{0, vec(0, 0, 0)}, Anchor{0, vec(0, 0, 0)}, Hook(vec(3, 0.5, 11))),
		rope("link", 0.3, 1e7, Anchor{0, vec(0, 0, 0)}, Anchor{1, vec(0, 0, 0)}),
	}
	for _, p := range rectangle(2, 1.5, 0.4) {
		m.Lines = append(m.Lines, rope("leg", 2.5, 1e6, Anchor{1, vec(0, 0, 0)}, Anchor{2, p}))
	}
	return m
}

// basket lays two slings round a pipe of 1000 kg, 6 m long and of the radius
// given: from the hook down one side and up the other. The center of gravity is
// off the middle of the pipe by across and along.
func basket(radius, across float64, grips bool) Model {
	m := Model{Bodies: []Body{{Name: "pipe", MassKg: 1000, CenterOfGravity: vec(0.1, across, 0)}}}
	hook := Hook(vec(0, 0, 5))
	for i, x := range []float64{-2, 2} {
		near, far := Anchor{0, vec(x, -radius, 0)}, Anchor{0, vec(x, radius, 0)}
		l := rope([]string{"left", "right"}[i], 2*math.Sqrt(4+9+radius*radius), 2e6, hook, near, far, hook)
		l.Grips = grips
		m.Lines = append(m.Lines, l)
	}
	return m
}

package mechanics

import (
	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"
)

// World stands in Anchor.Body for a point that does not move, such as a hook.
const World = -1

// Model is what hangs.
type Model struct {
	Bodies []Body
	Lines  []Line
	// Together lists groups of lines, by number, whose forces are wanted as one
	// where they meet: the legs on one link, the slings on one attachment. The
	// lines of a group have an anchor in common. Each group becomes a Joint.
	Together [][]int
}

// Body is rigid. Points on it are given in body axes, in meters.
type Body struct {
	// Name is used in messages; a number stands in where it is empty.
	Name   string
	MassKg float64
	// CenterOfGravity in body axes, meters.
	CenterOfGravity r3.Vec
	// Lumps are parts of MassKg, counted in CenterOfGravity too, that sit at points:
	// rigging that hangs from a beam. They matter to the forces inside a body alone.
	Lumps []Lump
	// Intended is the attitude at which the body is meant to hang.
	Intended Attitude
	// Point is a ring, a link or a knot that only gathers lines: no size, and no
	// attitude. All anchors on it and its center of gravity stand at its origin,
	// and Intended is zero.
	Point bool
}

// Lump is a mass at a point of a body, in body axes.
type Lump struct {
	MassKg float64
	At     r3.Vec
}

// Attitude turns body axes into world axes, as a unit quaternion. The zero
// value leaves them parallel.
type Attitude r3.Rotation

// TurnBy is the attitude after a turn by radians about a world axis, from axes
// that were parallel to the world's.
func TurnBy(radians float64, axis r3.Vec) Attitude {
	return Attitude(r3.NewRotation(radians, axis))
}

// World gives the world components of a vector in body axes.
func (a Attitude) World(v r3.Vec) r3.Vec { return turn(a.unit(), v) }

// Body gives the body components of a vector in world axes.
func (a Attitude) Body(v r3.Vec) r3.Vec { return turn(quat.Conj(a.unit()), v) }

func (a Attitude) unit() quat.Number {
	if a == (Attitude{}) {
		return quat.Number{Real: 1}
	}
	q := quat.Number(a)
	return quat.Scale(1/quat.Abs(q), q)
}

// Anchor is one end of a line: a point of a body in body axes, or of the world
// in world axes (then it is a hook). Meters.
type Anchor struct {
	Body int
	At   r3.Vec
}

// Hook is an anchor that does not move. Meters, world axes, z up.
func Hook(at r3.Vec) Anchor { return Anchor{Body: World, At: at} }

// Line is a rope, a chain or a rod. It runs straight from one anchor to the
// other, and perhaps on in further straight runs; it pulls and never pushes.
type Line struct {
	// Name is used in messages; a number stands in where it is empty.
	Name     string
	From, To Anchor
	// Further are more straight runs of the same rope: over a sheave, through a
	// ring, round a body.
	Further []Run
	// Grips is for a sling laid round a body. Without it the rope runs freely, and
	// one tension stands in all runs. With it the rope slides until its runs pull
	// alike while the bodies are held at the intended attitude; from then on
	// friction holds it, each run keeps the length it had then and carries a
	// tension of its own.
	Grips bool
	// LengthM is the length without load of all runs together, bearing point to
	// bearing point, without what lies on sheaves or round a body.
	LengthM float64
	// StiffnessN is EA, the pull in newtons that would double the length if
	// the line stayed elastic: modulus of elasticity times metallic area.
	StiffnessN float64
	// MaxStrain is the stretch over length at which it counts as too short for its
	// place rather than loaded; 0 takes that of the options.
	MaxStrain float64
}

// Run is a straight part of a rope between two anchors.
type Run struct{ From, To Anchor }

// runs is the number of straight parts of a line.
func (l *Line) runs() int { return 1 + len(l.Further) }

// run gives a straight part of a line, the one from From to To first.
func (l *Line) run(j int) Run {
	if j == 0 {
		return Run{l.From, l.To}
	}
	return l.Further[j-1]
}

// Options tune the judgment. The zero value of a field takes the default.
type Options struct {
	// MaxTiltDeg is the turn about horizontal axes, away from the intended
	// attitude, beyond which a load counts as overturned. Default 20.
	MaxTiltDeg float64
	// MaxStrain is the stretch over length at which a line counts as too short
	// for its place rather than loaded. Default 0.02: wire rope parts near
	// there. What stretches more has a limit of its own in its line.
	MaxStrain float64
	// GravityMS2 is the acceleration of free fall. Default 9.80665, the
	// standard value of ISO 80000-3.
	GravityMS2 float64
	// SkipBounds leaves out the bounds of lines and joints: their meaning is then
	// Skipped.
	SkipBounds bool
}

func (o Options) withDefaults() Options {
	for _, f := range []struct {
		v *float64
		d float64
	}{{&o.MaxTiltDeg, 20}, {&o.MaxStrain, 0.02}, {&o.GravityMS2, 9.80665}} {
		if *f.v == 0 {
			*f.v = f.d
		}
	}
	return o
}

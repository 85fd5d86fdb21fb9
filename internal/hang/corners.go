package hang

import (
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

func atCorner(name string) string {
	if name == leastMass {
		return "its mass without the tolerance"
	}
	return "its center of gravity at " + name + " of its tolerance"
}

// leastMass names the corner of the load's mass as the plan gives it; all else is
// computed with that at the upper end of its tolerance.
const leastMass = "its mass as given"

// corner is a place of the center of gravity within its tolerance, or another
// mass.
type corner struct {
	shift  r3.Vec
	massKg float64
	name   string // empty as the plan has it
}

// corners lists the plan's own center of gravity, the corners of its box, and the
// least mass. Where nothing but the load has a mass, less of it changes shares
// only by the stretch.
func (p *Position) corners() []corner {
	l := p.layout.lift
	list := []corner{{massKg: l.mass}}
	masses := []float64{l.mass}
	if least := float64(*l.plan.Load.Mass); len(l.plan.Beams) > 0 && least < l.mass {
		list = append(list, corner{massKg: least, name: leastMass})
		masses = append(masses, least)
	}
	if t := l.plan.Load.CenterTolerance; t != nil {
		for _, m := range masses {
			list = append(list, boxCorners(*t, m)...)
		}
	}
	return list
}

// boxCorners are the corners of a box round the center of gravity; an axis along
// which it is exactly known has none.
func boxCorners(t plan.Point, massKg float64) []corner {
	list := []corner{{massKg: massKg}}
	for i, axis := range []string{"x", "y", "z"} {
		by := []r3.Vec{{X: float64(t.X)}, {Y: float64(t.Y)}, {Z: float64(t.Z)}}[i]
		if by == (r3.Vec{}) {
			continue
		}
		var both []corner
		for _, sign := range []string{"-", "+"} {
			for _, c := range list {
				c.name = strings.TrimSpace(c.name + " " + sign + axis)
				if c.shift = r3.Add(c.shift, by); sign == "-" {
					c.shift = r3.Sub(c.shift, r3.Scale(2, by))
				}
				both = append(both, c)
			}
		}
		list = both
	}
	return slices.DeleteFunc(list, func(c corner) bool { return c.name == "" })
}

// shifted is the model with the load's mass and center of gravity at a corner.
func (p *Position) shifted(c corner) mechanics.Model {
	m := p.model
	m.Bodies = slices.Clone(m.Bodies)
	m.Bodies[0].MassKg = c.massKg
	m.Bodies[0].CenterOfGravity = r3.Add(m.Bodies[0].CenterOfGravity, c.shift)
	return m
}

package hang

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// least mass of what only gathers legs, where the plan gives none: too little to
// matter, enough to compute with.
const leastNodeKg = 0.1

// model describes the lift for mechanics: the load, the beams, and what gathers
// legs below a beam or below a link, joined by one line for each leg and for
// each such link.
func (y *layout) model() mechanics.Model {
	l := y.lift
	var m mechanics.Model
	m.Bodies = append(m.Bodies, mechanics.Body{Name: "the load", MassKg: l.mass, CenterOfGravity: l.center(), Intended: y.attitude})
	y.addHooks(&m)
	y.addBeams(&m)
	y.addNodes(&m)
	y.addLines(&m)
	return m
}

// addHooks adds the hooks where the load hangs from several: each swings on its
// hoist rope.
func (y *layout) addHooks(m *mechanics.Model) {
	y.swings = slices.Repeat([]int{-1}, len(y.lift.plan.Hooks))
	if len(y.lift.plan.Hooks) == 1 {
		return
	}
	for _, h := range y.hooks() {
		y.swings[h] = len(m.Bodies)
		name := "hook " + y.lift.plan.Hooks[h].ID
		m.Bodies = append(m.Bodies, mechanics.Body{Name: name, Point: true, MassKg: leastNodeKg})
		m.Lines = append(m.Lines, y.rigid(name, mechanics.Hook(y.headOf(h)), y.swings[h], y.lift.ropeM(h)))
	}
}

// addBeams adds those that are used, each with the rigging that hangs from it as
// masses at its points: what is between there and the next body is carried by
// the upper of the two.
func (y *layout) addBeams(m *mechanics.Model) {
	y.beam = make([]int, len(y.lift.plan.Beams))
	for i, b := range y.lift.plan.Beams {
		y.beam[i] = -1
		if !y.beamAt[i].placed {
			continue
		}
		y.beam[i] = len(m.Bodies)
		mass := float64(*b.Item.Mass)
		moment := r3.Scale(mass, centerOf(b))
		var lumps []mechanics.Lump
		for n, s := range y.lift.plan.Supports {
			if y.lift.bodyOf(s.Point) == i+1 && y.inUse[n] && !y.knotted(n) {
				below := massOf(s.By) + y.legsMass(n)
				lumps = append(lumps, mechanics.Lump{MassKg: below, At: vector(s.Point.At)})
				mass += below
				moment = r3.Add(moment, r3.Scale(below, vector(s.Point.At)))
			}
		}
		m.Bodies = append(m.Bodies, mechanics.Body{
			Name: b.Item.ID, MassKg: mass, CenterOfGravity: r3.Scale(1/mass, moment), Lumps: lumps, Intended: y.beamAt[i].attitude,
		})
	}
}

// centerOf is a beam's center of gravity: the middle between its outermost
// points where the plan gives none.
func centerOf(b plan.Beam) r3.Vec {
	if c := b.Item.CenterOfGravity; c != nil {
		return r3.Vec{X: float64(c.X), Y: float64(c.Y), Z: float64(c.Z)}
	}
	low, high := vector(b.Points[0].At), vector(b.Points[0].At)
	for _, p := range b.Points[1:] {
		v := vector(p.At)
		low = r3.Vec{X: min(low.X, v.X), Y: min(low.Y, v.Y), Z: min(low.Z, v.Z)}
		high = r3.Vec{X: max(high.X, v.X), Y: max(high.Y, v.Y), Z: max(high.Z, v.Z)}
	}
	return r3.Scale(0.5, r3.Add(low, high))
}

// legsMass is the mass of all legs of a support, those that are parked too.
func (y *layout) legsMass(support int) float64 {
	s := y.lift.plan.Supports[support]
	sum := 0.0
	for _, leg := range slices.Concat(s.Legs, s.Parked) {
		sum += massOf(leg.Down)
	}
	return sum
}

// knotted reports whether what is between a point of a beam and its legs has a
// length, so that it leans with their pull.
func (y *layout) knotted(support int) bool {
	s := y.lift.plan.Supports[support]
	below, _ := heightOf(s)
	return s.Hook < 0 && below > 0
}

// addNodes adds what leans with the pull of the legs it gathers: the lower end
// of what hangs from a beam, and intermediate links that take two legs.
func (y *layout) addNodes(m *mechanics.Model) {
	n := len(y.lift.plan.Supports)
	y.node, y.nodeLine, y.link, y.joint = make([]int, n), make([]int, n), make([][]int, n), make([][]int, n)
	for n, s := range y.lift.plan.Supports {
		y.node[n] = -1
		y.link[n], y.joint[n] = slices.Repeat([]int{-1}, len(s.Links)), slices.Repeat([]int{-1}, len(s.Links))
		if !y.inUse[n] {
			continue
		}
		if y.knotted(n) {
			y.node[n] = len(m.Bodies)
			m.Bodies = append(m.Bodies, mechanics.Body{
				Name: s.By[len(s.By)-1].Item.Base().ID, Point: true, MassKg: max(leastNodeKg, massOf(s.By)+y.legsMass(n)),
			})
		}
		for k, link := range s.Links {
			if length, _ := link.Item.Bearing(); len(link.Legs) > 1 && length != nil {
				y.link[n][k] = len(m.Bodies)
				m.Bodies = append(m.Bodies, mechanics.Body{Name: link.Item.Base().ID, Point: true, MassKg: leastNodeKg})
			}
		}
	}
}

// upper is what the legs of a support hang from in the model.
func (y *layout) upper(support int) mechanics.Anchor {
	s := y.lift.plan.Supports[support]
	switch {
	case s.Hook >= 0 && y.swings[s.Hook] >= 0:
		return mechanics.Anchor{Body: y.swings[s.Hook]}
	case s.Hook >= 0:
		return mechanics.Hook(y.hookAt[s.Hook])
	case y.node[support] >= 0:
		return mechanics.Anchor{Body: y.node[support]}
	}
	return y.anchor(s.Point)
}

// anchor is a point of the load or of a beam.
func (y *layout) anchor(a *plan.Attachment) mechanics.Anchor {
	if b := y.lift.bodyOf(a); b > 0 {
		return mechanics.Anchor{Body: y.beam[b-1], At: vector(a.At)}
	}
	return mechanics.Anchor{Body: 0, At: vector(a.At)}
}

// addLines adds a line for each leg in use, then those of what leans with them.
func (y *layout) addLines(m *mechanics.Model) {
	n := len(y.lift.legs)
	y.line, y.tops, y.ends = make([]int, n), make([]ends, n), make([]ends, n)
	for i := range y.lift.legs {
		y.line[i] = -1
		if y.carries[i] {
			y.line[i] = len(m.Lines)
			m.Lines = append(m.Lines, y.lineOf(i))
		}
	}
	for n, s := range y.lift.plan.Supports {
		if y.node[n] >= 0 {
			below, _ := heightOf(s)
			y.nodeLine[n] = len(m.Lines)
			m.Lines = append(m.Lines, y.rigid(m.Bodies[y.node[n]].Name, y.anchor(s.Point), y.node[n], below))
		}
		for k, link := range s.Links {
			if y.link[n][k] < 0 {
				continue
			}
			length, _ := link.Item.Bearing()
			m.Lines = append(m.Lines, y.rigid(link.Item.Base().ID, y.upper(n), y.link[n][k], float64(*length)))
			var legs []int
			for _, leg := range link.Legs {
				legs = append(legs, y.line[y.legIndex(n, leg)])
			}
			y.joint[n][k] = len(m.Together)
			m.Together = append(m.Together, legs)
		}
	}
}

// legIndex is the index among all legs of one of a support's.
func (y *layout) legIndex(support, leg int) int {
	first := slices.IndexFunc(y.lift.legs, func(l Leg) bool { return l.Support == support })
	return first + leg
}

func (y *layout) rigid(name string, from mechanics.Anchor, node int, lengthM float64) mechanics.Line {
	return mechanics.Line{Name: name, From: from, To: mechanics.Anchor{Body: node}, LengthM: lengthM, StiffnessN: y.lift.stiffN()}
}

// lineOf describes one leg, from the top down.
func (y *layout) lineOf(i int) mechanics.Line {
	leg := y.lift.legs[i]
	s := y.lift.plan.Supports[leg.Support]
	line := mechanics.Line{Name: "leg " + leg.ID, From: y.upper(leg.Support), LengthM: leg.Route.LengthM, StiffnessN: y.lift.stiffN()}
	if !y.lift.stiff && leg.Route.StiffnessN > 0 {
		line.StiffnessN = leg.Route.StiffnessN
	}
	line.MaxStrain = mostStrain(leg.Leg)
	y.tops[i] = ends{s.Point, s.Point}
	if y.node[leg.Support] >= 0 {
		y.tops[i] = ends{}
	}
	if k := y.linkOf(leg); k >= 0 && y.link[leg.Support][k] >= 0 {
		length, _ := s.Links[k].Item.Bearing()
		line.From = mechanics.Anchor{Body: y.link[leg.Support][k]}
		line.StiffnessN *= (line.LengthM - float64(*length)) / line.LengthM // the same rope, without the link
		line.LengthM -= float64(*length)
		y.tops[i] = ends{}
	}
	y.ends[i] = ends{leg.End.Attachment, leg.End.Attachment}
	switch leg.End.Kind {
	case plan.RunsTo:
		line.To = y.anchor(leg.End.Attachment)
		line.Further = []mechanics.Run{{From: line.From, To: y.anchor(leg.End.Second)}}
		y.ends[i][1] = leg.End.Second
	case plan.Basket:
		y.basketLine(i, leg, &line)
	case plan.Choke:
		line.To = mechanics.Anchor{Body: 0, At: y.around[i].at[0]}
		line.LengthM -= y.around[i].roundM
	default:
		line.To = y.anchor(leg.End.Attachment)
	}
	return line
}

// basketLine gives a basket its second run. Round a body it grips, through a
// point the rope runs.
func (y *layout) basketLine(i int, leg Leg, line *mechanics.Line) {
	second := leg.Support
	if leg.End.UpTo != nil {
		second = *leg.End.UpTo
	}
	if second != leg.Support {
		y.tops[i][1] = y.lift.plan.Supports[second].Point
		if y.node[second] >= 0 {
			y.tops[i][1] = nil
		}
	}
	run := mechanics.Run{From: y.upper(second)}
	if a := leg.End.Attachment; a != nil {
		line.To, run.To = y.anchor(a), y.anchor(a)
	} else {
		line.To = mechanics.Anchor{Body: 0, At: y.around[i].at[0]}
		run.To = mechanics.Anchor{Body: 0, At: y.around[i].at[1]}
		line.Grips = true
		line.LengthM -= y.around[i].roundM
	}
	line.Further = []mechanics.Run{run}
}

// linkOf is the index of the intermediate link that a leg hangs from, -1 for
// none.
func (y *layout) linkOf(leg Leg) int {
	if leg.Link == nil {
		return -1
	}
	return slices.IndexFunc(y.lift.plan.Supports[leg.Support].Links, func(l plan.LinkUse) bool { return l.Item == leg.Link.Item })
}

// beamAxis is the point and the direction, in a beam's own axes, along which its
// inner forces are taken: from its center of gravity along the direction in which
// its points lie the furthest apart.
func (y *layout) beamAxis(i int) (at, along r3.Vec) {
	b := y.lift.plan.Beams[i]
	var low, high r3.Vec
	for k, p := range b.Points {
		v := vector(p.At)
		if k == 0 {
			low, high = v, v
		}
		low = r3.Vec{X: min(low.X, v.X), Y: min(low.Y, v.Y), Z: min(low.Z, v.Z)}
		high = r3.Vec{X: max(high.X, v.X), Y: max(high.Y, v.Y), Z: max(high.Z, v.Z)}
	}
	switch size := r3.Sub(high, low); {
	case size.X >= size.Y && size.X >= size.Z:
		along = r3.Vec{X: 1}
	case size.Y >= size.Z:
		along = r3.Vec{Y: 1}
	default:
		along = r3.Vec{Z: 1}
	}
	return centerOf(b), along
}

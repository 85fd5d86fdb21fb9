package hang

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// TestHeading: points that are turned about the vertical and moved, no matter how
// far, give back the turn; a single point or a heap of them gives none.
func TestHeading(t *testing.T) {
	at := func(x, y float64) *plan.Attachment {
		return &plan.Attachment{At: &plan.Point{X: quantity.Length(x), Y: quantity.Length(y)}}
	}
	points := []*plan.Attachment{at(-2, 0), at(2, 0.3), at(1, -0.5)}
	for _, deg := range []float64{0, 37, 90, -90, 150, -179} {
		var targets []r3.Vec
		for _, p := range points {
			x, y := float64(p.At.X), float64(p.At.Y)
			targets = append(targets, r3.Vec{X: 40 + x*cos(deg) - y*sin(deg), Y: -7 + x*sin(deg) + y*cos(deg), Z: 3 * x})
		}
		near(t, "turn", heading(points, targets)*180/math.Pi, deg, 1e-9)
	}
	near(t, "turn of one", heading(points[:1], []r3.Vec{{X: 5}}), 0, 0)
	near(t, "turn of a heap", heading(points, []r3.Vec{{X: 5}, {X: 5}, {X: 5}}), 0, 0)
}

// underSpreader is a load below a spreader whose points lie AXIS the load.
const underSpreader = `load:
  mass: 8 t
  center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}
  attachments:
    - {id: L, kind: padeye, x: LX m, y: LY m, z: 1 m}
    - {id: R, kind: padeye, x: RX m, y: RY m, z: 1 m}
gear:
  - {id: T1, THICK, length: 4 m}
  - {id: T2, THICK, length: 4 m}
  - {id: D1, THICK, length: 3 m}
  - {id: D2, THICK, length: 3 m}
  - {id: SB, kind: spreader_beam, mass: 1 t,
     points: [{id: tl, x: -2 m, y: 0 m, z: 0 m}, {id: tr, x: 2 m, y: 0 m, z: 0 m}, {id: bl, x: -2 m, y: 0 m, z: 0 m}, {id: br, x: 2 m, y: 0 m, z: 0 m}]}
rigging:
  - {from: hook, legs: [{down: [T1], end: {kind: to, at: SB.tl}}, {down: [T2], end: {kind: to, at: SB.tr}}]}
  - {from: SB.bl, legs: [{down: [D1], end: {kind: to, at: L}}]}
  - {from: SB.br, legs: [{down: [D2], end: {kind: to, at: R}}]}
`

// TestBeamsLieOverWhatTheyHold: along the load, across it, the other way round or
// askew, a spreader is squeezed by W/(2 tan b) and its legs pull W/(2 sin b) (statics).
func TestBeamsLieOverWhatTheyHold(t *testing.T) {
	w := 9000 * gravity
	for _, deg := range []float64{0, 90, 180, -35} {
		coordinate := func(m float64) string { return fmt.Sprintf("%.6f m", m) }
		l := hung(t, underSpreader, "LX m", coordinate(-2*cos(deg)), "LY m", coordinate(-2*sin(deg)), "RX m", coordinate(2*cos(deg)), "RY m", coordinate(2*sin(deg)))
		p := &l.Positions[0]
		near(t, "top leg", p.Line(0).TensionN, w/2/sin(60), 1e-3*w)
		near(t, "drop", p.Line(2).TensionN, 4000*gravity, 1e-3*w)
		near(t, "squeeze", p.Worst.Beams[0].CompressionN, w/2/math.Tan(math.Pi/3), 1e-3*w)
		near(t, "tilt of the beam", p.Worst.Beams[0].TiltDeg, 0, 0.01)
		for i := range l.Legs {
			if p.byStiffness(i) {
				t.Errorf("turned by %g deg, leg %d is said to be settled by stiffness", deg, i)
			}
		}
	}
}

// frame is a load on plumb slings below a frame.
const frame = `load:
  mass: 8 t
  center_of_gravity: {x: 0 m, y: 0 m, z: -1 m}
  attachments: [ATTACHMENTS]
gear: [SLINGS
  {id: T1, THICK, length: 4 m}, {id: T2, THICK, length: 4 m},
  {id: SB, kind: spreader_beam, mass: 1 t, points: [{id: tl, x: -2 m, y: 0 m, z: 0.6 m}, {id: tr, x: 2 m, y: 0 m, z: 0.6 m}POINTS]}]
rigging:
  - {from: hook, legs: [{down: [T1], end: {kind: to, at: SB.tl}}, {down: [T2], end: {kind: to, at: SB.tr}}]}
LEGS`

// below fills a frame in with plumb slings at some places, all of one rope.
func below(sling string, places ...[2]float64) []string {
	var attachments, slings, points, legs []string
	for i, p := range places {
		attachments = append(attachments, fmt.Sprintf("{id: A%d, kind: padeye, x: %g m, y: %g m, z: 0 m}", i, p[0], p[1]))
		slings = append(slings, fmt.Sprintf("{id: D%d, kind: wire_rope_sling, core: iwrc, mass: 0.1 kg, %s},", i, sling))
		points = append(points, fmt.Sprintf(", {id: p%d, x: %g m, y: %g m, z: 0 m}", i, p[0], p[1]))
		legs = append(legs, fmt.Sprintf("  - {from: SB.p%d, legs: [{down: [D%d], end: {kind: to, at: A%d}}]}\n", i, i, i))
	}
	return []string{"ATTACHMENTS", strings.Join(attachments, ", "), "SLINGS", strings.Join(slings, " "), "POINTS", strings.Join(points, ""), "LEGS", strings.Join(legs, "")}
}

// TestFourPlumbSlingsAreSettledByStiffness: four slings below a stiff frame are one
// more than three that statics settles; three are not.
func TestFourPlumbSlingsAreSettledByStiffness(t *testing.T) {
	const sling = "diameter: 20 mm, length: 3 m"
	corners := [][2]float64{{-2, -1}, {2, -1}, {2, 1}, {-2, 1}}
	four := hung(t, frame, below(sling, corners...)...)
	three := hung(t, frame, below(sling, [2]float64{-2, -1}, [2]float64{-2, 1}, [2]float64{2, 0})...)
	for i := 2; i < 6; i++ {
		if !four.Positions[0].byStiffness(i) {
			t.Errorf("one of four, %s, is said to be settled by statics", four.Legs[i].ID)
		}
		near(t, "one of four alike", four.Positions[0].Line(i).TensionN, 2000*gravity, 10)
	}
	for i := 2; i < 5; i++ {
		if three.Positions[0].byStiffness(i) {
			t.Errorf("one of three, %s, is said to be settled by stiffness", three.Legs[i].ID)
		}
	}
}

// inBridles is a load on two bridles of two legs below a spreader.
const inBridles = `load:
  mass: 8 t
  center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}
  attachments:
    - {id: A1, kind: padeye, x: -2 m, y: -1 m, z: 1 m}
    - {id: A2, kind: padeye, x: -2 m, y: 1 m, z: 1 m}
    - {id: A3, kind: padeye, x: 2 m, y: -1 m, z: 1 m}
    - {id: A4, kind: padeye, x: 2 m, y: 1 m, z: 1 m}
gear:
  - {id: T1, THICK, length: 4 m}
  - {id: T2, THICK, length: 4 m}
  - {id: D1, THICK, length: 2 m}
  - {id: D2, THICK, length: 2 m}
  - {id: D3, THICK, length: 2 m}
  - {id: D4, THICK, length: 2 m}
  - {id: M1, kind: master_link, inside_length: 300 mm, mass: 5 kg}
  - {id: M2, kind: master_link, inside_length: 300 mm, mass: 5 kg}
  - {id: SB, kind: spreader_beam, mass: 1 t,
     points: [{id: tl, x: -2 m, y: 0 m, z: 0 m}, {id: tr, x: 2 m, y: 0 m, z: 0 m}, {id: bl, x: -2 m, y: 0 m, z: 0 m}, {id: br, x: 2 m, y: 0 m, z: 0 m}]}
rigging:
  - {from: hook, legs: [{down: [T1], end: {kind: to, at: SB.tl}}, {down: [T2], end: {kind: to, at: SB.tr}}]}
  - {from: SB.bl, by: [M1], legs: [{down: [D1], end: {kind: to, at: A1}}, {down: [D2], end: {kind: to, at: A2}}]}
  - {from: SB.br, by: [M2], legs: [{down: [D3], end: {kind: to, at: A3}}, {down: [D4], end: {kind: to, at: A4}}]}
`

// TestTwoBridlesBelowASpreaderAreSettledByStatics: the four legs hold one load, and
// still each pulls a quarter of it over the sine of 60 deg, whatever their lengths
// are to the millimeter.
func TestTwoBridlesBelowASpreaderAreSettledByStatics(t *testing.T) {
	for _, first := range []string{"2 m", "2.002 m"} {
		l := hung(t, inBridles, "D1, THICK, length: 2 m", "D1, THICK, length: "+first)
		p := &l.Positions[0]
		for i := 2; i < 6; i++ {
			if p.byStiffness(i) {
				t.Errorf("%s is said to be settled by stiffness", l.Legs[i].ID)
			}
			near(t, l.Legs[i].ID, p.Line(i).TensionN, 2000*gravity/sin(60), 2e-3*2000*gravity)
		}
	}
}

package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// relax is a second way to balance, sharing nothing with the solver: it lets the
// load move under its forces and moments and stops it at every peak of kinetic
// energy (dynamic relaxation; Day 1965, Barnes 1999, from memory). Rotation is a matrix, mass
// is whatever keeps the steps stable. It gives tensions and the tilt in degrees.
func relax(m Model) (tensions []float64, tilt float64) {
	weight := m.Bodies[0].MassKg * gravity
	r := [3]r3.Vec{{X: 1}, {Y: 1}, {Z: 1}} // columns
	pos := vec(0, 0, 10-startDrop(m))
	var vel, spin r3.Vec
	inertia, turning := 0.0, 0.0
	for _, l := range m.Lines {
		k := l.StiffnessN / l.LengthM
		inertia += k
		turning += k * r3.Norm2(l.To.At)
	}
	tensions = make([]float64, len(m.Lines))
	was := 0.0
	for step := range 400000 {
		force, moment := vec(0, 0, -weight), r3.Vec{}
		for i, l := range m.Lines {
			arm := r3.Add(r3.Scale(l.To.At.X, r[0]), r3.Add(r3.Scale(l.To.At.Y, r[1]), r3.Scale(l.To.At.Z, r[2])))
			d := r3.Sub(l.From.At, r3.Add(pos, arm))
			reach := r3.Norm(d)
			tensions[i] = math.Max(0, l.StiffnessN*(reach/l.LengthM-1))
			f := r3.Scale(tensions[i]/reach, d)
			force = r3.Add(force, f)
			moment = r3.Add(moment, r3.Cross(arm, f))
		}
		if step%50 == 0 && r3.Norm(force) < 1e-7*weight && r3.Norm(moment) < 1e-7*weight {
			break
		}
		vel = r3.Add(vel, r3.Scale(1/inertia, force))
		spin = r3.Add(spin, r3.Scale(1/turning, moment))
		if now := inertia*r3.Norm2(vel) + turning*r3.Norm2(spin); now < was {
			vel, spin, was = r3.Vec{}, r3.Vec{}, 0
			continue
		} else {
			was = now
		}
		pos = r3.Add(pos, vel)
		if a := r3.Norm(spin); a > 0 {
			for c := range r {
				r[c] = r3.Rotate(r[c], a, spin)
			}
		}
	}
	return tensions, degrees(math.Acos(math.Min(1, r[2].Z)))
}

// startDrop puts the center of gravity where the first leg comes taut.
func startDrop(m Model) float64 {
	drop := math.Inf(1)
	for _, l := range m.Lines {
		p := l.To.At
		drop = math.Min(drop, p.Z+math.Sqrt(l.LengthM*l.LengthM-p.X*p.X-p.Y*p.Y))
	}
	return drop
}

// Random four-leg loads, off center, uneven, some legs slack, some tilted: the
// two ways give the same tensions and the same tilt.
func TestFourLegsAgainstDynamicRelaxation(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	within := func(lo, hi float64) float64 { return lo + (hi-lo)*rng.Float64() }
	compared, slack, tilted := 0, 0, 0
	for range 120 {
		points := shifted(rectangle(within(2, 6), within(1, 4), within(-0.4, 0.8)), vec(within(-1, 1), within(-0.5, 0.5), 0))
		m := fitted(1000, points, within(3, 6), 1000*gravity*within(60, 400))
		for i := range m.Lines {
			m.Lines[i].LengthM *= 1 + within(-0.02, 0.02)*float64(rng.IntN(3))
		}
		r := solve(t, m)
		if r.Verdict != Steady || r.Balance.Rests != 1 {
			continue
		}
		compared++
		want, tilt := relax(m)
		near(t, "tilt", r.Balance.Bodies[0].TiltDeg, tilt, 2e-3)
		for i, l := range r.Balance.Lines {
			near(t, "tension over weight", l.TensionN/(1000*gravity), want[i]/(1000*gravity), 1e-4)
			if l.Slack {
				slack++
			}
		}
		if r.Balance.Bodies[0].TiltDeg > 3 {
			tilted++
		}
	}
	if compared < 60 || slack < 10 || tilted < 10 {
		t.Errorf("too few cases say anything: %d compared, %d slack legs, %d tilted", compared, slack, tilted)
	}
	t.Logf("%d compared, %d slack legs, %d tilted loads", compared, slack, tilted)
}

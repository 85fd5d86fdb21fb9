package hang

import (
	"math"

	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// Change is what a trial changes of a lift.
type Change struct {
	// LengthM gives the length of a leg, in meters, from the one it has now; nil
	// keeps all as they are.
	LengthM func(leg int, nowM float64) float64
	// LowerM is by how much lower the load's center of gravity lies, in meters.
	LowerM float64
}

// Try hangs a plan's load with a change, at the corners of its tolerances too where
// that is asked for. It serves to try what would put a lift right.
func Try(p *plan.Plan, c Change, corners bool) *Lift {
	changed := *p
	if at := p.Load.CenterOfGravity; at != nil {
		lower := *at
		lower.Z -= quantity.Length(c.LowerM)
		changed.Load.CenterOfGravity = &lower
	}
	out, l := prepare(&changed)
	if l == nil {
		return out
	}
	if c.LengthM != nil {
		for i := range l.legs {
			l.legs[i].Route.LengthM = c.LengthM(i, l.legs[i].Route.LengthM)
		}
	}
	return l.hangAll(out, corners)
}

// Stands reports whether the load hangs steady in every phase, and at the corners of
// its tolerances as far as they were tried, with no slack legs that it could rock
// between, and its center of gravity may rise by so many meters everywhere.
func (l *Lift) Stands(riseM float64) bool {
	if l.Reason != "" || !l.Steady() || !l.AtWorst() {
		return false
	}
	for _, p := range l.Positions {
		if b := p.Balance; b.Rocks || b.Rests > 1 || b.Bodies[0].MayRiseM < riseM {
			return false
		}
	}
	return true
}

// TiltDeg is how far the load tilts from how it is meant to hang, in degrees: the
// most in any phase, as the plan has it and within the tolerances. Good only where it
// hangs steady, and the second only where the corners were tried.
func (l *Lift) TiltDeg() (ownDeg, worstDeg float64) {
	for _, p := range l.Positions {
		ownDeg, worstDeg = max(ownDeg, p.Balance.Bodies[0].TiltDeg), max(worstDeg, p.Worst.TiltDeg)
	}
	return ownDeg, worstDeg
}

// SwingM is how far the center of gravity moves sideways as the load comes free, in
// meters: the most in any phase. Good only where it hangs steady.
func (l *Lift) SwingM() float64 {
	most := 0.0
	for _, p := range l.Positions {
		most = math.Max(most, p.Balance.Bodies[0].SwingM)
	}
	return most
}

// Taut reports whether no leg in use is slack. Good only where it hangs steady.
func (l *Lift) Taut() bool {
	for _, p := range l.Positions {
		for i := range l.Legs {
			if line := p.Line(i); line != nil && line.Slack {
				return false
			}
		}
	}
	return true
}

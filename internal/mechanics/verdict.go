package mechanics

import (
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"
)

// overstretched names the lines whose strain at st is beyond the limit.
func (s *system) overstretched(st []pose) []Reason {
	r := Reason{Cause: TooShort, Body: World, Limit: s.opt.MaxStrain}
	var names []string
	for i := range s.strands {
		l := &s.strands[i]
		strain, most := l.reach(st)/l.length-1, s.maxStrain(l.line)
		if strain <= most {
			continue
		}
		if strain/most > r.Measured/r.Limit {
			r.Measured, r.Limit = strain, most
		}
		if !slices.Contains(r.Lines, l.line) {
			r.Lines = append(r.Lines, l.line)
			names = append(names, lineName(s.model, l.line))
		}
	}
	if names == nil {
		return nil
	}
	r.Text = fmt.Sprintf("too short to reach, or far too soft: %s would stretch by %.3g %% of the length; at most %.3g %% is believable",
		strings.Join(names, ", "), 100*r.Measured, 100*r.Limit)
	return []Reason{r}
}

func (s *system) maxStrain(line int) float64 {
	if own := s.model.Lines[line].MaxStrain; own > 0 {
		return own
	}
	return s.opt.MaxStrain
}

// turned names the bodies that ended beyond the limit from where they are meant
// to hang.
func (s *system) turned(st []pose) []Reason {
	var why []Reason
	for b := range st {
		tilt, _ := tiltAndHeading(s.masses[b].intended, st[b].q)
		if tilt <= s.opt.MaxTiltDeg {
			continue
		}
		why = append(why, Reason{Cause: Turned, Body: b, Measured: tilt, Limit: s.opt.MaxTiltDeg,
			Text: fmt.Sprintf("%s comes to rest %.1f deg from its intended attitude, about horizontal axes; the limit is %g deg",
				bodyName(s.model, b), tilt, s.opt.MaxTiltDeg)})
	}
	return why
}

// pointsBelow names the bodies held on one line, or at one point, with the
// center of gravity above it at the intended attitude.
func (s *system) pointsBelow() []Reason {
	var why []Reason
	for b := range s.masses {
		at, along, ok := s.holdingLine(b)
		if !ok {
			continue
		}
		// From the line to the center of gravity, at right angles to the line.
		out := r3.Sub(r3.Scale(r3.Dot(at, along), along), at)
		height := turn(s.masses[b].intended, out).Z
		if height <= onLine*s.masses[b].arm {
			continue
		}
		where := "the line of its attachment points"
		if along == (r3.Vec{}) {
			where = "its only attachment point"
		}
		why = append(why, Reason{Cause: PointsBelow, Body: b, Measured: height,
			Text: fmt.Sprintf("the center of gravity of %s stands %.4g m above %s: it rolls over, however high the hook",
				bodyName(s.model, b), height, where)})
	}
	return why
}

func (s *system) overturned(cause Cause, st []pose, c curve) Result {
	where := "at the intended attitude, even with lines cut to fit"
	if cause == UnsteadyAtRest {
		where = "where its forces balance"
	}
	r := Reason{Cause: cause, Body: World, Measured: c.rightingM, Limit: c.least}
	if c.known {
		r.Body = s.mostTurned(c)
	}
	name := "the load"
	if r.Body != World {
		name = bodyName(s.model, r.Body)
	}
	r.Text = fmt.Sprintf("%s does not right itself %s: the smallest disturbance turns it over", name, where)
	return Result{Verdict: Overturns, Why: append(s.pointsBelow(), r)}
}

// mostTurned is the body that the least resisted turn turns most.
func (s *system) mostTurned(c curve) int {
	best, most := World, -1.0
	for b := range s.masses {
		if s.masses[b].point {
			continue
		}
		o := s.masses[b].turn
		if by := norm(c.turns[o : o+3]); by > most+1e-9 {
			best, most = b, by
		}
	}
	return best
}

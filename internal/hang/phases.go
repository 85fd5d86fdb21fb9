package hang

import (
	"fmt"
	"math"
	"strconv"

	"liftlint/internal/plan"
)

// phase is one attitude that the load is held at.
type phase struct {
	name     string
	pitch    float64
	released []string
}

// phasesOf lists the attitudes of a lift: its own, or those of all its phases,
// step by step.
func phasesOf(p *plan.Plan) []phase {
	if len(p.Phases) == 0 {
		return []phase{{pitch: float64(p.Load.Pitch)}}
	}
	var list []phase
	for _, ph := range p.Phases {
		for _, pitch := range pitches(ph) {
			name := ph.Name
			if ph.Until != nil {
				name = fmt.Sprintf("%s at %s deg", ph.Name, strconv.FormatFloat(pitch, 'f', -1, 64))
			}
			list = append(list, phase{name: name, pitch: pitch, released: ph.Released})
		}
	}
	return list
}

// pitches are those of a phase, in degrees, its last one always among them.
func pitches(ph plan.Phase) []float64 {
	from := float64(ph.Pitch)
	if ph.Until == nil || ph.Step == nil {
		return []float64{from}
	}
	until, step := float64(*ph.Until), float64(*ph.Step)
	var list []float64
	for n := 0; ; n++ {
		at := from + float64(n)*step
		if step > 0 && at >= until-1e-9 || step < 0 && at <= until+1e-9 || step == 0 {
			return append(list, until)
		}
		list = append(list, at)
	}
}

// PitchStepDeg is the largest step of pitch between two positions that follow each
// other, in degrees.
func PitchStepDeg(p *plan.Plan) float64 {
	most := 0.0
	list := phasesOf(p)
	for i := 1; i < len(list); i++ {
		most = max(most, math.Abs(list[i].pitch-list[i-1].pitch))
	}
	return most
}

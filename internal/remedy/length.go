package remedy

import (
	"math"

	"liftlint/internal/quantity"
)

// Lengths are offered in steps that slings are made and measured in.
const (
	metricStepM = 0.010
	usStepM     = 0.0254 // an inch
)

// step rounds a length up to the next step: never down, or the remedy would
// fall short.
func (m *Mender) step(lengthM float64) float64 {
	step := m.lengthStep()
	return math.Ceil(lengthM/step-1e-9) * step
}

func (m *Mender) lengthStep() float64 {
	if m.units == quantity.US {
		return usStepM
	}
	return metricStepM
}

// upwards words a length rounded up.
func (m *Mender) upwards(lengthM float64) string {
	return quantity.Length(m.step(lengthM)).Format(m.units)
}

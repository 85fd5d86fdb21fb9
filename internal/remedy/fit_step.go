package remedy

import (
	"math"

	"liftlint/internal/quantity"
)

// Widths of fittings are offered in finer steps than lengths of slings.
const (
	metricFineM = 0.001
	usFineM     = 0.0254 / 16
)

func (m *Mender) fine() float64 {
	if m.units == quantity.US {
		return usFineM
	}
	return metricFineM
}

// widthUp words a width rounded up, so that it is never short.
func (m *Mender) widthUp(widthM float64) string {
	step := m.fine()
	return quantity.Length(math.Ceil(widthM/step-1e-6) * step).Format(m.units)
}

// widthDown words a width rounded down; false where nothing is left.
func (m *Mender) widthDown(widthM float64) (string, bool) {
	step := m.fine()
	n := math.Floor(widthM/step + 1e-6)
	return quantity.Length(n * step).Format(m.units), n > 0
}

package remedy

import (
	"fmt"
	"math"
	"strings"

	"liftlint/internal/hang"
	"liftlint/internal/quantity"
)

// levelLengths words the lengths of the legs with which the load hangs as it is
// meant to, rounded to steps that slings are made in, and which leg changes the most.
// They are offered only where the load, hung with them, is within the limit.
func (m *Mender) levelLengths(a ask) (string, bool) {
	lengths, level, ok := m.levels()
	if !ok {
		return "", false
	}
	to := hang.Change{LengthM: func(leg int, _ float64) float64 { return level[leg] }}
	if tried := hang.Try(m.plan, to, true); !tried.Stands(0) || !within(tried, a) {
		return "", false
	}
	most, all := 0, make([]string, len(level))
	for i, to := range level {
		all[i] = fmt.Sprintf("%s %s (now %s)", m.facts.Document.Legs[i].ID, quantity.Length(to).Format(m.units), quantity.Length(lengths[i]).Format(m.units))
		if math.Abs(to-lengths[i]) > math.Abs(level[most]-lengths[most])+sameM {
			most = i
		}
	}
	change, way := level[most]-lengths[most], "longer"
	if change < 0 {
		way = "shorter"
	}
	if math.Abs(change) < m.lengthStep()/2 {
		return "", false
	}
	return fmt.Sprintf("make the legs so long that the load hangs as it is meant to, above all %s, %s by %s; bearing to bearing: %s",
		m.facts.Document.Legs[most].ID, way, quantity.Length(math.Abs(change)).Format(m.units), strings.Join(all, ", ")), true
}

// sameM is the difference below which two legs change alike: the first is named.
const sameM = 1e-6

// levels are the legs' lengths and those that would level the load, in steps; false
// unless they are known of every leg.
func (m *Mender) levels() (lengths, level []float64, ok bool) {
	for _, leg := range m.facts.Document.Legs {
		if leg.LengthM == nil || leg.LevelLengthM == nil {
			return nil, nil, false
		}
		lengths, level = append(lengths, *leg.LengthM), append(level, m.nearest(*leg.LevelLengthM))
	}
	return lengths, level, len(level) > 0
}

// nearest rounds a length to the nearest step.
func (m *Mender) nearest(lengthM float64) float64 {
	step := m.lengthStep()
	return math.Round(lengthM/step) * step
}

// within reports whether what was found too great is within its limit in a trial.
func within(l *hang.Lift, a ask) bool {
	own, worst := l.TiltDeg()
	switch a.measured {
	case "plumb_offset_m":
		return l.SwingM() <= a.limit && own <= levelDeg
	case "tilt_at_worst_deg":
		return worst <= a.limit
	}
	return own <= a.limit && worst <= levelDeg
}

// levelDeg is the tilt that is taken as level enough (common practice).
const levelDeg = 5.0

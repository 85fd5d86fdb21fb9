package quantity

import (
	"fmt"
	"math"
	"math/big"
	"strings"
)

// System is a choice of units for people, as a plan's `units` names it.
type System string

// The systems. Any other System prints as Metric.
const (
	Metric System = "metric"
	US     System = "us"
)

// ParseSystem finds a system by its name.
func ParseSystem(name string) (System, error) {
	switch s := System(name); s {
	case Metric, US:
		return s, nil
	}
	return "", fmt.Errorf("%s is not a system of units; the systems are %s and %s", quote(name), Metric, US)
}

// choice is a unit and the SI size from which it is used.
type choice struct {
	from float64
	unit string
}

// style is how a kind is printed: choices by rising size.
type style struct{ metric, us []choice }

// pick finds the unit for the size of si.
func (s style) pick(si float64, sys System) *unit {
	choices := s.metric
	if sys == US {
		choices = s.us
	}
	name := ""
	for _, c := range choices {
		if name == "" || math.Abs(si) >= c.from {
			name = c.unit
		}
	}
	if u, ok := unitNamed(name); ok {
		return u
	}
	return &unit{name: name, scale: scale{num: 1, den: 1}, show: digits{3, 0, 2}}
}

func format(k Kind, si float64, sys System) string {
	u := k.info().style.pick(si, sys)
	return roundedText(si, u, u.scaleOf(k))
}

// Units that are printed but never read: days, diameters of the rope, and how
// many times one figure is another.
const (
	dayUnit      = "days"
	diameterUnit = "d"
	timesUnit    = "times"
)

// suffix is the end of a fact's name and what it says of the number.
type suffix struct {
	end  string
	kind Kind // unknown for units that are only printed
	// per is how many of the number make one unit of the kind.
	per uint64
}

// suffixes stand in the order in which they are tried.
var suffixes = [...]suffix{
	{"_m_s", KindSpeed, 1},
	{"_n", KindForce, 1},
	{"_nm", KindMoment, 1},
	{"_kg", KindMass, 1},
	{"_m", KindLength, 1},
	{"_deg", KindAngle, 1},
	{"_pa", KindPressure, 1},
	{"_c", KindTemperature, 1},
	{"_ratio", KindRatio, 1},
	{"_percent", KindRatio, 100},
	{"_" + dayUnit, 0, 1},
	{"_" + diameterUnit, 0, 1},
	{"_" + timesUnit, 0, 1},
}

// suffixOf finds the unit in a fact's name. Compound units, as in moment_n_m
// and mass_kg_per_m, are not known; taking their last part would be wrong.
func suffixOf(name string) (suffix, bool) {
	for _, s := range suffixes {
		stem, ok := strings.CutSuffix(name, s.end)
		if !ok {
			continue
		}
		return s, stem != "" && !strings.HasSuffix(stem, "_per") && !endsInUnit(stem)
	}
	return suffix{}, false
}

func endsInUnit(stem string) bool {
	for _, s := range suffixes {
		if strings.HasSuffix(stem, s.end) {
			return true
		}
	}
	return false
}

// printer prints numbers of one fact in one unit.
type printer struct {
	unit  *unit
	scale scale
}

// printer picks the unit for numbers up to the given size.
func (s suffix) printer(size float64, sys System) printer {
	st := s.kind.info().style
	if name := strings.TrimPrefix(s.end, "_"); name == dayUnit || name == diameterUnit || name == timesUnit {
		st = style{metric: []choice{{0, name}}, us: []choice{{0, name}}}
	}
	u := st.pick(size/float64(s.per), sys)
	sc := u.scale
	sc.num *= s.per
	return printer{u, sc}
}

// FormatSuffix prints a fact for people. The end of its name says what the
// number is: _n, _nm (newton meters), _kg, _m, _deg, _pa, _m_s, _c, _days, _d (rope
// diameters), _times, _ratio (1 is 100 %) or _percent. It is false for a name that ends in none of these.
func FormatSuffix(name string, si float64, sys System) (string, bool) {
	s, ok := suffixOf(name)
	if !ok {
		return "", false
	}
	p := s.printer(si, sys)
	return roundedText(si, p.unit, p.scale), true
}

// FormatPair prints a measured value and its limit as FormatSuffix would, but
// both in one unit and with as many digits as it takes for different values to
// look different, the smaller one smaller. Names without a known suffix give
// plain numbers.
func FormatPair(name string, measured, limit float64, sys System) (measuredText, limitText string) {
	s, ok := suffixOf(name)
	if !ok {
		s = suffix{per: 1}
	}
	p := s.printer(max(math.Abs(measured), math.Abs(limit)), sys)
	a, b := p.scale.from(measured), p.scale.from(limit)
	if a == nil || b == nil {
		return roundedText(measured, p.unit, p.scale), roundedText(limit, p.unit, p.scale)
	}
	return p.unit.apart(a, b)
}

// apart adds digits until the texts differ. Rounding keeps order, so texts
// that differ stand in the order of their values. It ends because different
// floats differ exactly.
func (u *unit) apart(a, b *big.Rat) (string, string) {
	places := max(u.places(a), u.places(b))
	for more := 0; ; more++ {
		one, other := u.text(a, places, more), u.text(b, places, more)
		if one != other || a.Cmp(b) == 0 {
			return one, other
		}
	}
}

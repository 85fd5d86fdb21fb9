package quantity

// StandardGravity turns a mass into its weight, in m/s2. It is the
// conventional value of the 3rd CGPM (1901), also in ISO 80000-3.
const StandardGravity = 9.80665

// scale says how a number x in some unit becomes SI: (x - zero) * num / den.
// Numerator and denominator are exact.
type scale struct {
	num, den uint64
	zero     int64
}

// gravity is StandardGravity as an exact fraction.
func gravity() scale { return scale{num: 980665, den: 100000} }

// digits says how a unit is rounded for people: to sig significant digits, but
// never fewer than least nor more than most decimals. Whole digits stay.
type digits struct{ sig, least, most int }

// unit is one row of the table of units.
type unit struct {
	name  string
	kind  Kind
	scale scale
	show  digits
	split bool // printed for people as feet, inches and fractions
}

// units holds every unit that is read. Its order is the order of messages.
//
// Sources of the factors, all exact by definition: pound 0.45359237 kg and
// yard 0.9144 m (international yard and pound agreement, 1959); short ton 2000
// lb and long ton 2240 lb; pound-force from the pound and standard gravity,
// and with the foot the pound-force foot; knot 1852 m an hour (International
// Hydrographic Conference, 1929); Fahrenheit by 1.8 F = 1 K with 32 F = 0 C.
// They are also in NIST SP 811, appendix B. One t/m2 is the pressure of 1000 kg under standard gravity.
var units = [...]unit{
	{name: "kg", kind: KindMass, scale: scale{num: 1, den: 1}, show: digits{4, 0, 1}},
	{name: "t", kind: KindMass, scale: scale{num: 1000, den: 1}, show: digits{4, 0, 2}},
	{name: "lb", kind: KindMass, scale: scale{num: 45359237, den: 1e8}, show: digits{4, 0, 1}},
	{name: "short_ton", kind: KindMass, scale: scale{num: 2000 * 45359237, den: 1e8}, show: digits{4, 0, 2}},
	{name: "long_ton", kind: KindMass, scale: scale{num: 2240 * 45359237, den: 1e8}, show: digits{4, 0, 2}},

	{name: "mm", kind: KindLength, scale: scale{num: 1, den: 1000}, show: digits{3, 0, 1}},
	{name: "cm", kind: KindLength, scale: scale{num: 1, den: 100}, show: digits{3, 0, 1}},
	{name: "m", kind: KindLength, scale: scale{num: 1, den: 1}, show: digits{3, 2, 2}},
	{name: "in", kind: KindLength, scale: scale{num: 254, den: 10000}, show: digits{4, 0, 2}, split: true},
	{name: "ft", kind: KindLength, scale: scale{num: 3048, den: 10000}, show: digits{4, 0, 2}},

	{name: "N", kind: KindForce, scale: scale{num: 1, den: 1}, show: digits{3, 0, 1}},
	{name: "kN", kind: KindForce, scale: scale{num: 1000, den: 1}, show: digits{3, 0, 2}},
	{name: "lbf", kind: KindForce, scale: scale{num: 44482216152605, den: 1e13}, show: digits{3, 0, 1}},

	{name: "deg", kind: KindAngle, scale: scale{num: 1, den: 1}, show: digits{3, 0, 1}},

	{name: "kPa", kind: KindPressure, scale: scale{num: 1000, den: 1}, show: digits{3, 0, 1}},
	{name: "N/mm2", kind: KindPressure, scale: scale{num: 1000000, den: 1}, show: digits{3, 0, 2}},
	{name: "MPa", kind: KindPressure, scale: scale{num: 1000000, den: 1}, show: digits{3, 0, 2}},
	{name: "t/m2", kind: KindPressure, scale: scale{num: 980665, den: 100}, show: digits{3, 0, 1}},
	{name: "psi", kind: KindPressure, scale: scale{num: 44482216152605, den: 6451600000}, show: digits{3, 0, 1}},
	{name: "psf", kind: KindPressure, scale: scale{num: 44482216152605, den: 929030400000}, show: digits{3, 0, 1}},

	{name: "m/s", kind: KindSpeed, scale: scale{num: 1, den: 1}, show: digits{3, 0, 1}},
	{name: "km/h", kind: KindSpeed, scale: scale{num: 10, den: 36}, show: digits{3, 0, 1}},
	{name: "mph", kind: KindSpeed, scale: scale{num: 44704, den: 100000}, show: digits{3, 0, 1}},
	{name: "kt", kind: KindSpeed, scale: scale{num: 1852, den: 3600}, show: digits{3, 0, 1}},

	{name: "C", kind: KindTemperature, scale: scale{num: 1, den: 1}, show: digits{3, 0, 1}},
	{name: "F", kind: KindTemperature, scale: scale{num: 5, den: 9, zero: 32}, show: digits{3, 0, 1}},

	{name: "%", kind: KindRatio, scale: scale{num: 1, den: 100}, show: digits{3, 0, 1}},

	{name: "N m", kind: KindMoment, scale: scale{num: 1, den: 1}, show: digits{3, 0, 1}},
	{name: "kN m", kind: KindMoment, scale: scale{num: 1000, den: 1}, show: digits{3, 0, 2}},
	{name: "lbf ft", kind: KindMoment, scale: scale{num: 13558179483314004, den: 1e16}, show: digits{3, 0, 1}},
}

// unitNamed finds a unit by its exact name.
func unitNamed(name string) (*unit, bool) {
	for i := range units {
		if units[i].name == name {
			return &units[i], true
		}
	}
	return nil, false
}

// scaleOf is the way from u to the SI unit of kind k. A rated load takes
// masses too, as the weight of that mass.
func (u *unit) scaleOf(k Kind) scale {
	if k != KindLoad || u.kind != KindMass {
		return u.scale
	}
	g := gravity()
	return scale{num: u.scale.num * g.num, den: u.scale.den * g.den}
}

package quantity

// Mass is in kg.
type Mass float64

// Length is in m.
type Length float64

// Force is in N.
type Force float64

// Angle is in degrees. What it is measured from stands in the name of the
// field that holds it.
type Angle float64

// Pressure is in Pa.
type Pressure float64

// Speed is in m/s.
type Speed float64

// Temperature is in degrees Celsius.
type Temperature float64

// Ratio is a share: 1 is 100 %.
type Ratio float64

// Moment is a bending moment in newton meters.
type Moment float64

// Weight is the force of a mass under standard gravity.
func (m Mass) Weight() Force { return Force(float64(m) * StandardGravity) }

// ParseMass reads kg, t, lb, short_ton and long_ton. Like all functions here
// it takes either sign and returns an *Error.
func ParseMass(text string) (Mass, error) { return parse[Mass](KindMass, text) }

// ParseLength reads mm, cm, m, in, ft and feet with inches.
func ParseLength(text string) (Length, error) { return parse[Length](KindLength, text) }

// ParseForce reads N, kN and lbf.
func ParseForce(text string) (Force, error) { return parse[Force](KindForce, text) }

// ParseAngle reads deg.
func ParseAngle(text string) (Angle, error) { return parse[Angle](KindAngle, text) }

// ParsePressure reads kPa, MPa, N/mm2, t/m2, psi and psf.
func ParsePressure(text string) (Pressure, error) { return parse[Pressure](KindPressure, text) }

// ParseSpeed reads m/s, km/h, mph and kt.
func ParseSpeed(text string) (Speed, error) { return parse[Speed](KindSpeed, text) }

// ParseTemperature reads C and F, not below absolute zero.
func ParseTemperature(text string) (Temperature, error) {
	return parse[Temperature](KindTemperature, text)
}

// ParseRatio reads %.
func ParseRatio(text string) (Ratio, error) { return parse[Ratio](KindRatio, text) }

// ParseMoment reads N m, kN m and lbf ft.
func ParseMoment(text string) (Moment, error) { return parse[Moment](KindMoment, text) }

func parse[T ~float64](k Kind, text string) (T, error) {
	si, err := k.Parse(text)
	return T(si), err
}

// In is the shortest text in the unit that reads back as the same value. A
// unit that the kind does not have gives the kind's first unit: the text
// always names what it is in.
func (m Mass) In(unit string) string { return exactText(KindMass, float64(m), unit) }

// In is like [Mass.In].
func (l Length) In(unit string) string { return exactText(KindLength, float64(l), unit) }

// In is like [Mass.In].
func (f Force) In(unit string) string { return exactText(KindForce, float64(f), unit) }

// In is like [Mass.In].
func (a Angle) In(unit string) string { return exactText(KindAngle, float64(a), unit) }

// In is like [Mass.In].
func (p Pressure) In(unit string) string { return exactText(KindPressure, float64(p), unit) }

// In is like [Mass.In].
func (s Speed) In(unit string) string { return exactText(KindSpeed, float64(s), unit) }

// In is like [Mass.In].
func (t Temperature) In(unit string) string { return exactText(KindTemperature, float64(t), unit) }

// In is like [Mass.In].
func (r Ratio) In(unit string) string { return exactText(KindRatio, float64(r), unit) }

// In is like [Mass.In].
func (m Moment) In(unit string) string { return exactText(KindMoment, float64(m), unit) }

// Format is for people. Metric: kg below 10 t, then t, to 4 digits. US: lb.
func (m Mass) Format(sys System) string { return format(KindMass, float64(m), sys) }

// Format is for people. Metric: mm below 1 m, then m to 2 decimals. US: feet
// and inches, in sixteenths where that is within 0.005 in, otherwise to 0.01 in.
func (l Length) Format(sys System) string { return format(KindLength, float64(l), sys) }

// Format is for people: kN or lbf, to 3 digits; whole lbf stay.
func (f Force) Format(sys System) string { return format(KindForce, float64(f), sys) }

// Format is for people: degrees to one decimal.
func (a Angle) Format(sys System) string { return format(KindAngle, float64(a), sys) }

// Format is for people: kPa or psf.
func (p Pressure) Format(sys System) string { return format(KindPressure, float64(p), sys) }

// Format is for people: m/s or mph to one decimal.
func (s Speed) Format(sys System) string { return format(KindSpeed, float64(s), sys) }

// Format is for people: C or F to one decimal.
func (t Temperature) Format(sys System) string { return format(KindTemperature, float64(t), sys) }

// Format is for people: percent to one decimal.
func (r Ratio) Format(sys System) string { return format(KindRatio, float64(r), sys) }

// Format is for people: kN m or lbf ft, to 3 digits; whole lbf ft stay.
func (m Moment) Format(sys System) string { return format(KindMoment, float64(m), sys) }

package quantity

// Load is what a body is rated for. Newtons are for computing, also where the
// body is marked in a unit of mass; Unit is the one marked on the body, in
// which the rating is reported. A shackle marked 6.5 t holds 63.7 kN.
//
// An empty or unknown Unit prints as N.
type Load struct {
	Newtons float64
	Unit    string
}

// ParseLoad reads the units of mass and those of force. A mass counts as its
// weight under standard gravity. It takes either sign and returns an *Error.
func ParseLoad(text string) (Load, error) {
	v, err := read(KindLoad, text)
	if err != nil {
		return Load{}, err
	}
	return Load{v.si, v.unit.name}, nil
}

// Times is the load changed by a factor, such as a derating, in the same unit.
func (l Load) Times(factor float64) Load { return Load{l.Newtons * factor, l.Unit} }

// In is like [Mass.In], with units of mass and force.
func (l Load) In(unit string) string {
	if _, ok := unitFor(KindLoad, unit); !ok {
		unit = "N"
	}
	return exactText(KindLoad, l.Newtons, unit)
}

// String is the load in its own unit, exactly.
func (l Load) String() string { return l.In(l.Unit) }

// Format is the load in its own unit, rounded for people as that unit is.
func (l Load) Format() string {
	u, ok := unitFor(KindLoad, l.Unit)
	if !ok {
		u, _ = unitNamed("N")
	}
	return roundedText(l.Newtons, u, u.scaleOf(KindLoad))
}

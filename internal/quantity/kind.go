package quantity

import (
	"fmt"
	"slices"
	"strings"
)

// Kind is what a value measures. The zero Kind is unknown and reads nothing.
type Kind int

// The kinds, each with the unit that its float64 holds.
const (
	KindMass        Kind = iota + 1 // kg
	KindLength                      // m
	KindForce                       // N
	KindAngle                       // degrees; the field's name says from where
	KindPressure                    // Pa
	KindSpeed                       // m/s
	KindTemperature                 // degrees Celsius
	KindRatio                       // 1 is 100 %
	KindLoad                        // N; what a body is rated for, as a mass or a force
	KindMoment                      // N m, of bending
)

// kindInfo is one row of the table of kinds.
type kindInfo struct {
	name    string // as ParseKind takes it
	noun    string // with its article, for messages
	example string
	takes   []Kind // the kinds of unit that are read
	style   style
	// ownNumber lets a message about a missing unit use the number that was
	// written, where it can mean one thing only: a bare 0.02 may be 2 %, and a
	// bare 6.3 kilograms or tonnes.
	ownNumber bool
}

// kinds is the one table that parsing, messages and printing share.
var kinds = [...]kindInfo{
	{name: "unknown", noun: "a value of unknown kind"},
	KindMass: {
		name: "mass", noun: "a mass", example: "8650 kg", takes: []Kind{KindMass},
		style: style{metric: []choice{{0, "kg"}, {9999.5, "t"}}, us: []choice{{0, "lb"}}},
	},
	KindLength: {
		name: "length", noun: "a length", example: "4.2 m", takes: []Kind{KindLength},
		style: style{metric: []choice{{0, "mm"}, {0.9995, "m"}}, us: []choice{{0, "in"}}},
	},
	KindForce: {
		name: "force", noun: "a force", example: "42.5 kN", takes: []Kind{KindForce},
		style: style{metric: []choice{{0, "kN"}}, us: []choice{{0, "lbf"}}},
	},
	KindAngle: {
		name: "angle", noun: "an angle", example: "60 deg", takes: []Kind{KindAngle}, ownNumber: true,
		style: style{metric: []choice{{0, "deg"}}, us: []choice{{0, "deg"}}},
	},
	KindPressure: {
		name: "pressure", noun: "a pressure", example: "150 kPa", takes: []Kind{KindPressure},
		style: style{metric: []choice{{0, "kPa"}, {1e6, "N/mm2"}}, us: []choice{{0, "psf"}, {1e6, "psi"}}},
	},
	KindSpeed: {
		name: "speed", noun: "a speed", example: "9.8 m/s", takes: []Kind{KindSpeed}, ownNumber: true,
		style: style{metric: []choice{{0, "m/s"}}, us: []choice{{0, "mph"}}},
	},
	KindTemperature: {
		name: "temperature", noun: "a temperature", example: "-5 C", takes: []Kind{KindTemperature},
		style: style{metric: []choice{{0, "C"}}, us: []choice{{0, "F"}}},
	},
	KindRatio: {
		name: "ratio", noun: "a percentage", example: "2 %", takes: []Kind{KindRatio},
		style: style{metric: []choice{{0, "%"}}, us: []choice{{0, "%"}}},
	},
	KindLoad: {
		name: "load", noun: "a rated load", example: "6.5 t", takes: []Kind{KindMass, KindForce},
		style: style{metric: []choice{{0, "kN"}}, us: []choice{{0, "lbf"}}},
	},
	KindMoment: {
		name: "moment", noun: "a bending moment", example: "12 kN m", takes: []Kind{KindMoment},
		style: style{metric: []choice{{0, "kN m"}}, us: []choice{{0, "lbf ft"}}},
	},
}

// Kinds lists all kinds in their fixed order.
func Kinds() []Kind {
	all := make([]Kind, 0, len(kinds)-1)
	for k := 1; k < len(kinds); k++ {
		all = append(all, Kind(k))
	}
	return all
}

// ParseKind finds a kind by its name, such as "mass". The error lists all.
func ParseKind(name string) (Kind, error) {
	var names []string
	for _, k := range Kinds() {
		if k.Name() == name {
			return k, nil
		}
		names = append(names, k.Name())
	}
	return 0, fmt.Errorf("%s is not a kind of value; the kinds are %s", quote(name), list(names, "and"))
}

func (k Kind) info() *kindInfo {
	if k < 0 || int(k) >= len(kinds) {
		k = 0
	}
	return &kinds[k]
}

// Name is the kind in one word, such as "mass".
func (k Kind) Name() string { return k.info().name }

// String is the same as Name.
func (k Kind) String() string { return k.Name() }

// Example is a value of this kind as one would write it.
func (k Kind) Example() string { return k.info().example }

// Units lists the units that this kind is read in.
func (k Kind) Units() []string {
	var names []string
	for i := range units {
		if k.takesUnit(&units[i]) {
			names = append(names, units[i].name)
		}
	}
	return names
}

func (k Kind) takesUnit(u *unit) bool { return slices.Contains(k.info().takes, u.kind) }

// Parse reads text as a value of this kind and returns it in the unit that
// the kind's constant names. The error is an *Error.
func (k Kind) Parse(text string) (float64, error) {
	v, err := read(k, text)
	if err != nil {
		return 0, err
	}
	return v.si, nil
}

// Check says what is wrong with text as a value of this kind, of either sign.
// The error is an *Error.
func (k Kind) Check(text string) error { return k.CheckSign(text, AnySign) }

// CheckSign is Check for a value that must also have the given sign.
func (k Kind) CheckSign(text string, s Sign) error {
	v, err := read(k, text)
	if err == nil {
		err = s.check(k, text, v.si)
	}
	if err != nil {
		return err
	}
	return nil
}

// list joins names for a sentence: "kg, t or lb".
func list(names []string, last string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	n := len(names) - 1
	return strings.Join(names[:n], ", ") + " " + last + " " + names[n]
}

package quantity

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestKindsAreComplete(t *testing.T) {
	for _, k := range Kinds() {
		back, err := ParseKind(k.Name())
		if err != nil || back != k {
			t.Errorf("%v: ParseKind gives %v, %v", k, back, err)
		}
		if err := k.Check(k.Example()); err != nil {
			t.Errorf("%v: its example is refused: %v", k, err)
		}
		if len(k.Units()) == 0 {
			t.Errorf("%v has no units", k)
		}
		for _, sys := range []System{Metric, US} {
			u := k.info().style.pick(1, sys)
			if !slices.Contains(k.Units(), u.name) {
				t.Errorf("%v prints as %q for %s", k, u.name, sys)
			}
		}
	}
}

func TestUnitsOfKinds(t *testing.T) {
	want := map[Kind][]string{
		KindMass:        {"kg", "t", "lb", "short_ton", "long_ton"},
		KindLength:      {"mm", "cm", "m", "in", "ft"},
		KindForce:       {"N", "kN", "lbf"},
		KindAngle:       {"deg"},
		KindPressure:    {"kPa", "N/mm2", "MPa", "t/m2", "psi", "psf"},
		KindSpeed:       {"m/s", "km/h", "mph", "kt"},
		KindTemperature: {"C", "F"},
		KindRatio:       {"%"},
		KindLoad:        {"kg", "t", "lb", "short_ton", "long_ton", "N", "kN", "lbf"},
		KindMoment:      {"N m", "kN m", "lbf ft"},
	}
	got := map[Kind][]string{}
	for _, k := range Kinds() {
		got[k] = k.Units()
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
}

// An unknown kind must never let a text pass.
func TestUnknownKindReadsNothing(t *testing.T) {
	for _, k := range []Kind{0, -1, 99} {
		for _, text := range []string{"3 m", "", "1,000 kg"} {
			err := k.Check(text)
			want := quote(text) + " cannot be read; the kind of value asked for is unknown"
			if err == nil || err.Error() != want {
				t.Errorf("kind %d: got %v, want %s", int(k), err, want)
			}
		}
		if k.Name() != "unknown" || k.Units() != nil {
			t.Errorf("kind %d: %s %v", int(k), k.Name(), k.Units())
		}
	}
}

func TestNamesOfKindsSignsAndSystems(t *testing.T) {
	messages := []string{}
	_, err := ParseKind("weight")
	messages = append(messages, err.Error())
	_, err = ParseSign("negative")
	messages = append(messages, err.Error())
	_, err = ParseSystem("imperial")
	messages = append(messages, err.Error())
	want := []string{
		"`weight` is not a kind of value; the kinds are mass, length, force, angle, pressure, speed, temperature, ratio, load and moment",
		"`negative` is not a sign; the signs are any, not_negative and positive",
		"`imperial` is not a system of units; the systems are metric and us",
	}
	if d := cmp.Diff(want, messages); d != "" {
		t.Error(d)
	}
	for _, s := range []Sign{AnySign, NotNegative, Positive} {
		if back, err := ParseSign(s.String()); err != nil || back != s {
			t.Errorf("%v: ParseSign gives %v, %v", s, back, err)
		}
	}
	if sys, err := ParseSystem("us"); err != nil || sys != US {
		t.Errorf("ParseSystem gives %v, %v", sys, err)
	}
}

// Other names must not hide a unit, nor each other, nor a ton.
func TestNamesAreDistinct(t *testing.T) {
	seen := map[string]string{}
	add := func(name, owner string) {
		if other, ok := seen[name]; ok {
			t.Errorf("%q belongs to %s and to %s", name, other, owner)
		}
		seen[name] = owner
	}
	for _, u := range units {
		add(lower(u.name), u.name)
	}
	for _, a := range aliases {
		if _, ok := unitNamed(a.unit); !ok {
			t.Errorf("alias of %q, which is no unit", a.unit)
		}
		for _, n := range split(a.names) {
			add(n, a.unit)
		}
	}
	for _, f := range foreigners {
		for _, n := range split(f.names) {
			add(n, f.note)
		}
	}
	for _, n := range split(tons) {
		add(n, "tons")
	}
}

// Each typed parser reads its own kind and refuses the units of others.
func TestTypedParsers(t *testing.T) {
	as := func(v float64, err error) any {
		if err != nil {
			return err.Error()
		}
		return v
	}
	mass, err1 := ParseMass("2 t")
	length, err2 := ParseLength("2 m")
	force, err3 := ParseForce("2 kN")
	angle, err4 := ParseAngle("2 deg")
	pressure, err5 := ParsePressure("2 kPa")
	speed, err6 := ParseSpeed("2 m/s")
	temperature, err7 := ParseTemperature("2 C")
	ratio, err8 := ParseRatio("2 %")
	load, err9 := ParseLoad("2 kN")
	_, err10 := ParseLoad("2 m")
	moment, err11 := ParseMoment("2 kN m")
	got := []any{
		as(float64(mass), err1), as(float64(length), err2), as(float64(force), err3),
		as(float64(angle), err4), as(float64(pressure), err5), as(float64(speed), err6),
		as(float64(temperature), err7), as(float64(ratio), err8), as(load.Newtons, err9), as(0, err10), as(float64(moment), err11),
	}
	want := []any{
		2000.0, 2.0, 2000.0, 2.0, 2000.0, 2.0, 2.0, 0.02, 2000.0,
		"`2 m` is a length; a rated load is asked for, such as `6.5 t`", 2000.0,
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
	if KindMass.String() != "mass" || Sign(7).String() != "sign 7" {
		t.Errorf("got %v and %v", KindMass, Sign(7))
	}
}

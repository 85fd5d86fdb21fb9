package quantity

import "strings"

// foreign is a unit that is known but not read, with what its author needs to
// rewrite the value.
type foreign struct {
	kind  Kind
	names string // parted by |, compared without regard to letter case
	note  string
}

// foreigners are kept out so that a plan holds few units and all its readers
// know them.
var foreigners = [...]foreign{
	{KindMass, "g|gm|gram|grams", "1000 g is 1 kg"},
	{KindMass, "oz|ounce|ounces", "16 oz is 1 lb"},
	{KindMass, "klb|klbs", "1 klb is 1000 lb"},
	{KindMass, "cwt|hundredweight", "1 cwt is 100 lb in the US and 112 lb in Britain"},
	{KindMass, "stone|stones", "1 stone is 14 lb"},
	{KindLength, "km|kilometer|kilometers|kilometre|kilometres", "1 km is 1000 m"},
	{KindLength, "dm", "1 dm is 100 mm"},
	{KindLength, "yd|yds|yard|yards", "1 yd is 3 ft"},
	{KindLength, "mi|mile|miles", "1 mile is 5280 ft"},
	{KindLength, "thou|mil|mils", "1000 thou is 1 in"},
	{KindForce, "kip|kips|klbf", "1 kip is 1000 lbf"},
	{KindForce, "dan", "1 daN is 10 N"},
	{KindForce, "mn|meganewton|meganewtons", "1 MN is 1000 kN"},
	{KindForce, "kgf|kp", "1 kgf is 9.80665 N"},
	{KindForce, "tf", "1 tf is 9.80665 kN"},
	{KindAngle, "rad|radian|radians", "1 rad is 57.2958 deg"},
	{KindAngle, "gon|grad", "100 gon is 90 deg"},
	{KindPressure, "pa|pascal|pascals", "1000 Pa is 1 kPa"},
	{KindPressure, "bar", "1 bar is 100 kPa"},
	{KindPressure, "kg/cm2|kgf/cm2", "1 kg/cm2 is 10 t/m2"},
	{KindPressure, "kg/m2|kgf/m2", "1000 kg/m2 is 1 t/m2"},
	{KindPressure, "ksi", "1 ksi is 1000 psi"},
	{KindPressure, "ksf", "1 ksf is 1000 psf"},
	{KindSpeed, "ft/s|fps", "1 ft/s is 0.3048 m/s"},
	{KindSpeed, "m/min", "60 m/min is 1 m/s"},
	{KindSpeed, "bft|beaufort", "a Beaufort number stands for a range of speeds"},
	{KindTemperature, "k|kelvin", "0 C is 273.15 K"},
	{KindMoment, "kip ft|kip-ft|ft kip|ft-kip|kip feet", "1 kip ft is 1000 lbf ft"},
	{KindMoment, "lbf in|lbf-in|lb in|lb-in|in lbf|in-lbf|in lb|in-lb|in lbs|in-lbs", "12 lbf in is 1 lbf ft"},
	{KindMoment, "mn m|mnm|mn-m|mn·m", "1 MN m is 1000 kN m"},
	{KindMoment, "kgf m|kgfm|kgf-m|kg m|kgm|kg-m", "1 kgf m is 9.80665 N m"},
	{KindMoment, "t m|tm|t-m|tf m|tfm", "1 t m is 9.80665 kN m"},
}

// tons are the words that mean a short ton, a long ton or a tonne depending on
// who writes them. A small t is the metric symbol.
const tons = "ton|tons"

func isTon(word string) bool { return word == "T" || named(tons, word) }

// named reports whether word is in names, without regard to letter case.
func named(names, word string) bool {
	for name := range strings.SplitSeq(names, "|") {
		if strings.EqualFold(name, word) {
			return true
		}
	}
	return false
}

// noUnit is the error for a bare number. The number itself is offered only where it
// can mean one thing: pasted with a guessed unit, it would be wrong a thousandfold.
func (a asker) noUnit(text string) *Error {
	err := a.inUnits("has no unit")
	_, symbol, _ := strings.Cut(a.kind.Example(), " ")
	own := text + " " + symbol
	if _, bad := strict(a.kind, own, own); bad == nil && a.kind.info().ownNumber {
		err.Example = own
	}
	return err
}

// unknownUnit says the most that is known of a word that is no unit here.
func (a asker) unknownUnit(word string) *Error {
	if isTon(word) {
		return a.whichTon()
	}
	for _, f := range foreigners {
		if !named(f.names, word) {
			continue
		}
		if !a.kind.takesUnit(&unit{kind: f.kind}) {
			return a.wrongKind(f.kind)
		}
		return a.inUnits("is in a unit that is not read here (" + f.note + ")")
	}
	if !startsUnit(word) {
		return a.inUnits("is not one number and one unit")
	}
	what := "has the unknown unit " + quote(word)
	if near, ok := nearest(word, a.kind.Units()); ok {
		what += ", nearest to " + near
	}
	return a.inUnits(what)
}

func (a asker) whichTon() *Error {
	if !a.kind.takesUnit(&unit{kind: KindMass}) {
		return a.wrongKind(KindMass)
	}
	err := a.example("can be read in three ways",
		"say which is meant: short_ton (2000 lb), long_ton (2240 lb) or t (1000 kg)")
	err.Example = ""
	return err
}

// startsUnit reports whether a word looks like a unit rather than like the
// leavings of a number.
func startsUnit(word string) bool {
	return !strings.ContainsRune("0123456789.,-+/*=<>()", rune(word[0]))
}

// nearest finds the known word at the smallest edit distance: at most one for
// short words, two for longer ones. The first of equals wins.
func nearest(word string, known []string) (string, bool) {
	best, found := 3, ""
	if len(word) <= 3 {
		best = 2
	}
	if len(word) > longest {
		return "", false
	}
	for _, k := range known {
		if d := distance(word, k); d < best && d < len(k) {
			best, found = d, k
		}
	}
	return found, found != ""
}

// distance is the edit distance of Levenshtein, by bytes.
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := diagonal
			if a[i] != b[j] {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j+1]+1, row[j]+1)
		}
	}
	return row[len(b)]
}

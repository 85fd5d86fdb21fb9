package quantity

import "strings"

// alias is a unit under other names, parted by | and compared without regard
// to letter case.
type alias struct{ unit, names string }

// aliases are not read, so that all plans look alike and a search for a unit
// finds it; but messages know them.
var aliases = [...]alias{
	{"kg", "kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes"},
	{"t", "tonne|tonnes|metric ton|metric tons|metric tonne|metric tonnes|metric_ton|mt|te"},
	{"lb", "lbs|pound|pounds|lbm|#"},
	{"short_ton", "short ton|short tons|short_tons|short-ton|short-tons|us ton|us tons"},
	{"long_ton", "long ton|long tons|long_tons|long-ton|long-tons|imperial ton|imperial tons"},
	{"mm", "mms|millimeter|millimeters|millimetre|millimetres"},
	{"cm", "cms|centimeter|centimeters|centimetre|centimetres"},
	{"m", "meter|meters|metre|metres|mtr|mtrs"},
	{"in", "ins|inch|inches"},
	{"ft", "foot|feet|fts"},
	{"N", "newton|newtons"},
	{"kN", "kns|kilonewton|kilonewtons"},
	{"lbf", "lbfs|lbsf|lb-f|pound-force|pounds-force|pound force|pounds force"},
	{"deg", "°|º|degs|degree|degrees"},
	{"kPa", "kn/m2|kilopascal|kilopascals"},
	{"t/m2", "tonne/m2|tonnes/m2|te/m2|mt/m2|t/sqm"},
	{"psi", "lb/in2|lbf/in2|lbs/in2"},
	{"psf", "lb/ft2|lbf/ft2|lbs/ft2"},
	{"m/s", "m/sec|mps|meters per second|metres per second"},
	{"km/h", "kph|kmh|kmph|km/hr"},
	{"mph", "mi/h|mile/h|miles/h|miles per hour"},
	{"kt", "kts|knot|knots"},
	{"C", "°c|ºc|℃|deg c|degc|degree c|degrees c|celsius|degrees celsius|centigrade"},
	{"F", "°f|ºf|℉|deg f|degf|degree f|degrees f|fahrenheit|degrees fahrenheit"},
	{"%", "percent|per cent|pct"},
	{"N m", "nm|n-m|n.m|n·m|n*m|newton meter|newton meters|newton metre|newton metres"},
	{"kN m", "knm|kn-m|kn.m|kn·m|kn*m|kilonewton meter|kilonewton meters|kilonewton metre|kilonewton metres"},
	{"lbf ft", "lbf-ft|lbf·ft|lb ft|lb-ft|lb·ft|lbs ft|ft lbf|ft-lbf|ft·lbf|ft lb|ft-lb|ft·lb|ft lbs|ft-lbs|foot pound|foot pounds|foot-pound|foot-pounds|pound-foot|pound-feet"},
}

// otherName puts the unit's own name where another name of it stands.
func otherName(k Kind, text string) string {
	return rewriteUnits(text, func(word string) string {
		if k == KindSpeed && strings.EqualFold(word, "kn") {
			return "kt" // elsewhere a slip for kN
		}
		bare := strings.TrimSuffix(word, ".")
		if _, ok := unitNamed(bare); ok {
			return bare
		}
		for _, a := range aliases {
			if named(a.names, bare) {
				return a.unit
			}
		}
		return word
	})
}

// otherLetters puts capitals and small letters right. A capital T stays: in
// places it is written for a ton.
func otherLetters(k Kind, text string) string {
	return rewriteUnits(text, func(word string) string {
		if _, ok := unitNamed(word); ok || isTon(word) {
			return word
		}
		for i := range units {
			if strings.EqualFold(units[i].name, word) {
				return units[i].name
			}
		}
		return word
	})
}

// rewriteUnits puts each word after a number through `to`. Where it changes
// one, a space stands before it in the result.
func rewriteUnits(text string, to func(string) string) string {
	var b strings.Builder
	rest := text
	if len(rest) > 0 && (rest[0] == '-' || rest[0] == '+') {
		b.WriteByte(rest[0])
		rest = rest[1:]
	}
	for rest != "" {
		_, after, ok := scanNumber(rest)
		if !ok {
			return text
		}
		b.WriteString(rest[:len(rest)-len(after)])
		var word, space string
		word, rest, space = cutWords(after)
		if next := to(word); next != word {
			b.WriteString(" " + next)
		} else {
			b.WriteString(after[:len(after)-len(rest)-len(space)])
		}
		if space != "" && rest != "" {
			b.WriteString(" ")
		}
	}
	return b.String()
}

// cutWords takes everything off up to the next number: a digit ends the words
// unless it belongs to a unit with a slash, such as t/m2.
func cutWords(s string) (words, rest, space string) {
	end, slash := len(s), false
	for i := range len(s) {
		slash = slash || s[i] == '/'
		if '0' <= s[i] && s[i] <= '9' && (!slash || s[i-1] == ' ') {
			end = i
			break
		}
	}
	head := strings.TrimRight(s[:end], " \t")
	return strings.TrimLeft(head, " \t"), s[end:], s[len(head):end]
}

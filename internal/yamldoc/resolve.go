package yamldoc

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// resolved is what a plain scalar means. A scalar that YAML versions read
// differently has an id and an advice instead of a certain meaning.
type resolved struct {
	kind   Kind
	value  any
	id     string
	advice string
}

// Numbers on which YAML 1.1 (its types int and float) and YAML 1.2 (its core
// schema, 10.3.2) agree, and those on which they do not. Kept as patterns to
// stand beside those of the standards.
var (
	agreedInt   = regexp.MustCompile(`^[-+]?(0|[1-9][0-9]*)$`)
	agreedFloat = regexp.MustCompile(`^[-+]?([0-9]+\.[0-9]*|\.[0-9]+)([eE][-+][0-9]+)?$`)
	leadingZero = regexp.MustCompile(`^[-+]?0[0-9]+$`)
	anyExponent = regexp.MustCompile(`^[-+]?([0-9]+(\.[0-9]*)?|\.[0-9]+)[eE][-+]?[0-9]+$`)
	otherBase   = regexp.MustCompile(`^[-+]?(0x[0-9a-fA-F_]+|0o[0-7_]+|0b[01_]+)$`)
	underscored = regexp.MustCompile(`^[-+]?[0-9][0-9_]*(\.[0-9_]*)?([eE][-+]?[0-9]+)?$`)
	sexagesimal = regexp.MustCompile(`^[-+]?([1-9][0-9_]*(:[0-5]?[0-9])+|[0-9][0-9_]*(:[0-5]?[0-9])+\.[0-9_]*)$`)
	notFinite   = regexp.MustCompile(`^([-+]?\.(inf|Inf|INF)|\.(nan|NaN|NAN))$`)
)

// resolve says what a plain scalar means.
func resolve(text string) resolved {
	switch text {
	case "", "null", "Null", "NULL":
		return resolved{kind: Null}
	case "true", "True", "TRUE":
		return resolved{kind: Bool, value: true}
	case "false", "False", "FALSE":
		return resolved{kind: Bool, value: false}
	case "~":
		return unclear(Null, "`~` is an easily missed way to write nothing; write null, or put it in quotes if it is text")
	}
	if legacyBool(text) {
		return unclear(Bool, "`"+text+"` is true or false to YAML 1.1 and text to YAML 1.2; write true or false, or put it in quotes if it is text")
	}
	if !numeric(text) {
		return resolved{kind: String}
	}
	return resolveNumber(text)
}

func unclear(kind Kind, advice string) resolved {
	return resolved{kind: kind, id: AmbiguousScalar, advice: advice}
}

// legacyBool reports the words of YAML 1.1's type bool that 1.2 dropped.
func legacyBool(text string) bool {
	switch text {
	case "y", "Y", "n", "N", "yes", "Yes", "YES", "no", "No", "NO", "on", "On", "ON", "off", "Off", "OFF":
		return true
	}
	return false
}

// numeric rules out at a glance what cannot be a number in any version; most
// quantities hold a space.
func numeric(text string) bool {
	if b := text[0]; b != '.' && b != '-' && b != '+' && (b < '0' || b > '9') {
		return false
	}
	return strings.Trim(text, "0123456789abcdefABCDEFxoINin+-._:") == ""
}

func resolveNumber(text string) resolved {
	switch {
	case agreedInt.MatchString(text):
		if v, err := strconv.ParseInt(text, 10, 64); err == nil {
			return resolved{kind: Number, value: v}
		}
		return float(text)
	case agreedFloat.MatchString(text):
		return float(text)
	case notFinite.MatchString(text):
		return resolved{kind: Number, id: NotFinite, advice: "`" + text + "` is no finite number; write a number, or put it in quotes if it is text"}
	case leadingZero.MatchString(text):
		digits := strings.TrimLeft(strings.TrimLeft(text, "+-"), "0")
		return unclear(Number, versions(text, "a leading zero", strings.TrimPrefix(text[:1], "0")+digits))
	case sexagesimal.MatchString(text):
		return unclear(Number, "`"+text+"` is a number in base 60 to YAML 1.1 and text to YAML 1.2; put it in quotes")
	case anyExponent.MatchString(text):
		return unclear(Number, versions(text, "this exponent", decimal(text)))
	case otherBase.MatchString(text), underscored.MatchString(text):
		return unclear(Number, versions(text, "this notation", decimal(text)))
	}
	return resolved{kind: String}
}

// versions words the advice about a number that versions read differently.
func versions(text, what, number string) string {
	if number == "" || number == "+" || number == "-" {
		number = "0"
	}
	return "`" + text + "` means different things to different YAML readers because of " + what +
		"; write " + number + ", or \"" + text + "\" in quotes if it is text"
}

// decimal writes a number of YAML 1.1 or 1.2 as a plain decimal.
func decimal(text string) string {
	bare := strings.ReplaceAll(text, "_", "")
	if v, err := strconv.ParseInt(bare, 0, 64); err == nil {
		return strconv.FormatInt(v, 10)
	}
	if v, err := strconv.ParseFloat(bare, 64); err == nil && math.Abs(v) < 1e15 {
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return "the decimal number"
}

func float(text string) resolved {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsInf(v, 0) || math.IsNaN(v) {
		return resolved{kind: Number, id: NotFinite, advice: "this number is too large to compute with; put it in quotes if it is text"}
	}
	return resolved{kind: Number, value: v}
}

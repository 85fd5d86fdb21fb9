package quantity

import (
	"math/big"
	"regexp"
	"strings"
	"sync"
)

// patterns are the expressions that rewriting needs beside the plain ones in
// the table of habits.
type patterns struct {
	exponent, comma, ambiguous, bound, notFinite, notDecimal, span, spanTo *regexp.Regexp
}

var expressions = sync.OnceValue(func() patterns {
	return patterns{
		exponent:   regexp.MustCompile(`^([+-]?\d*\.?\d+)[eE]([+-]?\d+)`),
		comma:      regexp.MustCompile(`^([+-]?(?:\d{1,3}(?:\.\d{3})+|\d+)),(\d)`),
		ambiguous:  regexp.MustCompile(`^([+-]?[1-9]\d{0,2}),(\d{3}(?:[^\d.,].*)?)$`),
		bound:      regexp.MustCompile(`(?i)^(?:[<>~=\x{2248}\x{2264}\x{2265}]|(?:about|approx|ca|circa|max|min)\b)`),
		notFinite:  regexp.MustCompile(`(?i)^[+-]?\.?(?:nan|inf|infinity)(?:[^a-z]|$)`),
		notDecimal: regexp.MustCompile(`(?i)^[+-]?0(?:x[0-9a-f]|o[0-7]|b[01])`),
		span:       regexp.MustCompile(`^[+-]?[\d.]+\s*(?:[-\x{2012}-\x{2014}\x{2026}]|\.{2,3})\s*[\d.]+\s*(/?)`),
		spanTo:     regexp.MustCompile(`^[+-]?[\d./]+\s*[A-Za-z%/2]*\s+to\s+\d`),
	}
})

// refuse finds what no rewrite can put right, because only the author knows
// what was meant.
func (a asker) refuse(text string) *Error {
	text = strings.Trim(text, " \t")
	re := expressions()
	const one = "one number and one unit are asked for"
	switch {
	case re.notFinite.MatchString(text):
		return a.inUnits("is not a number that can be measured")
	case re.notDecimal.MatchString(text):
		return a.example("is not in decimal digits", one)
	case strings.ContainsRune(text, '±') || strings.Contains(text, "+/-"):
		return a.example("has a plus-minus sign", one)
	case re.bound.MatchString(text):
		return a.example("is a bound or an estimate", one)
	case re.spanTo.MatchString(text), isSpan(re.span.FindStringSubmatch(text)):
		return a.example("is a range", "one value is asked for")
	case re.exponent.MatchString(text) && exponent(a.kind, text) == text:
		return a.example("has an exponent", "a number is written out in digits")
	}
	if m := re.ambiguous.FindStringSubmatch(text); m != nil {
		return a.comma(m[1], m[2])
	}
	return nil
}

// isSpan tells `2-10 ft` from the fraction in `1-1/8 in`.
func isSpan(match []string) bool { return match != nil && match[1] == "" }

// comma is the error for a comma before three digits. The two readings are a
// factor of a thousand apart, so both are named and neither is preferred.
func (a asker) comma(before, after string) *Error {
	err := a.example("has a comma, which may mark thousands or decimals", "a number is written without commas")
	thousands, _ := repair(a.kind, before+after)
	decimals, _ := repair(a.kind, before+"."+after)
	if _, bad := strict(a.kind, thousands, thousands); bad != nil {
		return err
	}
	if _, bad := strict(a.kind, decimals, decimals); bad != nil {
		return err
	}
	err.Allowed = "write " + quote(thousands) + " or " + quote(decimals)
	err.Example = ""
	return err
}

// decimalComma turns the comma into a point and drops points that part
// thousands. The ambiguous case never comes here: refuse has it.
func decimalComma(_ Kind, text string) string {
	m := expressions().comma.FindStringSubmatchIndex(text)
	if m == nil || expressions().ambiguous.MatchString(text) {
		return text
	}
	return strings.ReplaceAll(text[:m[3]], ".", "") + "." + text[m[4]:]
}

// exponent writes a number out in digits. Exponents beyond 15 stay: nobody
// means them, and the digits would not fit a line.
func exponent(_ Kind, text string) string {
	m := expressions().exponent.FindStringSubmatchIndex(text)
	if m == nil || m[5]-m[4] > 3 {
		return text
	}
	v, ok := new(big.Rat).SetString(text[:m[1]])
	limit := new(big.Rat).SetInt(integer("1000000000000000"))
	if !ok || new(big.Rat).Abs(v).Cmp(limit) >= 0 {
		return text
	}
	places, exact := v.FloatPrec()
	if !exact || places > mostDecimals {
		return text
	}
	return v.FloatString(places) + text[m[1]:]
}

// grouped makes a rewrite from pairs of an expression, whose first group is a
// number in groups of three, and the marks to drop from that number.
func grouped(pairs ...string) func(Kind, string) string {
	type step struct {
		re    *regexp.Regexp
		marks string
	}
	var steps []step
	for i := 0; i+1 < len(pairs); i += 2 {
		steps = append(steps, step{regexp.MustCompile(pairs[i]), pairs[i+1]})
	}
	return func(_ Kind, text string) string {
		for _, s := range steps {
			if m := s.re.FindStringSubmatchIndex(text); m != nil {
				return without(text[:m[3]], s.marks) + text[m[3]:]
			}
		}
		return text
	}
}

// without drops all characters of marks from text.
func without(text, marks string) string {
	return strings.Map(func(r rune) rune {
		if strings.ContainsRune(marks, r) {
			return -1
		}
		return r
	}, text)
}

// vulgar writes one-character fractions out.
func vulgar(_ Kind, text string) string {
	const fractions = "½=1/2 ⅓=1/3 ⅔=2/3 ¼=1/4 ¾=3/4 ⅛=1/8 ⅜=3/8 ⅝=5/8 ⅞=7/8"
	text = strings.ReplaceAll(text, "\u2044", "/")
	for pair := range strings.FieldsSeq(fractions) {
		one, plain, _ := strings.Cut(pair, "=")
		before, after, found := strings.Cut(text, one)
		if !found {
			continue
		}
		joint := ""
		if before != "" && '0' <= before[len(before)-1] && before[len(before)-1] <= '9' {
			joint = "-"
		}
		text = before + joint + plain + after
	}
	return text
}

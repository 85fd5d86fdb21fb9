package quantity

import (
	"regexp"
	"strings"
	"sync"
)

// habit is one way of writing that is common and not read. Its rewrite says
// the same thing in the grammar, and changes nothing where the habit is absent.
type habit struct {
	what    string // completes the sentence "`1 000 kg` ..."
	rewrite func(k Kind, text string) string
}

// explain finds the clearest error for a text that the strict grammar refused
// with first. A rewrite is offered only when the grammar reads it.
func explain(k Kind, text string, first *Error) *Error {
	if k.info().takes == nil {
		return first
	}
	a := asker{k, text}
	if err := a.refuse(text); err != nil {
		return err
	}
	fixed, what := repair(k, text)
	if what == "" {
		return first
	}
	if _, err := strict(k, fixed, text); err != nil {
		return err
	}
	return a.fix(what, fixed)
}

// repair applies all habits in turn and names the first that changed anything.
func repair(k Kind, text string) (fixed, what string) {
	fixed = strings.Trim(text, " \t")
	for _, h := range habits() {
		next := h.rewrite(k, fixed)
		if next != fixed && what == "" {
			what = h.what
		}
		fixed = next
	}
	return strings.Trim(fixed, " \t"), what
}

// replacing makes a rewrite from pairs of plain texts.
func replacing(pairs ...string) func(Kind, string) string {
	r := strings.NewReplacer(pairs...)
	return func(_ Kind, text string) string { return r.Replace(text) }
}

// matching makes a rewrite from pairs of expression and replacement.
func matching(pairs ...string) func(Kind, string) string {
	var steps []func(string) string
	for i := 0; i+1 < len(pairs); i += 2 {
		re, with := regexp.MustCompile(pairs[i]), pairs[i+1]
		steps = append(steps, func(s string) string { return re.ReplaceAllString(s, with) })
	}
	return func(_ Kind, text string) string {
		for _, step := range steps {
			text = step(text)
		}
		return text
	}
}

// habits is made when a text is first refused: most runs never need it. Order
// matters: look-alikes first, then numbers, then units.
var habits = sync.OnceValue(func() []habit {
	return []habit{
		{"has an invisible character in it", replacing("\u200b", "", "\u200e", "", "\u2060", "", "\ufeff", "", "\r", " ", "\n", " ")},
		{"has a special space in it", replacing("\u00a0", " ", "\u2007", " ", "\u2009", " ", "\u202f", " ", "\u3000", " ")},
		{"has a long dash where a plain one belongs", replacing("\u2212", "-", "\u2010", "-", "\u2011", "-", "\u2012", "-", "\u2013", "-", "\u2014", "-")},
		{"has a fraction in one character", vulgar},
		{"has a raised figure in its unit", replacing("²", "2", "^2", "2")},
		{"has an exponent", exponent},
		{"has marks between its thousands", grouped(
			`^([+-]?\d{1,3}(?:[ _'\x{2019}]\d{3})+)(?:[^\d/]|$)`, " _'\u2019",
			`^([+-]?\d{1,3}(?:,\d{3}){2,})(?:[^\d,]|$)`, ",",
			`^([+-]?\d{1,3}(?:,\d{3})+)\.\d`, ",",
			`^([+-]?\d{1,3}(?:\.\d{3}){2,})(?:[^\d.,]|$)`, ".",
		)},
		{"has a decimal comma", decimalComma},
		{"has marks for feet and inches", matching(`[\x{2018}\x{2019}\x{2032}\x{b4}]`, `'`, `[\x{201c}\x{201d}\x{2033}]|''`, `"`,
			`(\d)\s*'\s*[-,]?\s*(\d)`, "$1 ft $2", `(\d)\s*'`, "$1 ft", `(\d)\s*"`, "$1 in")},
		{"has spaces inside its fraction", matching(`(\d)\s*-\s*(\d+)\s*/\s*(\d+)`, "$1-$2/$3", `(\d)\s*/\s*(\d)`, "$1/$2")},
		{"has its sign apart from its number", matching(`^([+-])\s+([\d.])`, "$1$2")},
		{"has a hyphen or comma between its feet and its inches", matching(`(?i)(\d\s*(?:ft|feet|foot))\.?\s*[-,]\s*(\d)`, "$1 $2")},
		{"has a point after its number", matching(`^([+-]?\d+)\.(\s|[A-Za-z%])`, "$1$2")},
		{"gives its unit another name", otherName},
		{"has capital and small letters mixed up in its unit", otherLetters},
		{"has no unit on its inches", matching(`^([+-]?\d+\s*ft\s*\d[\d ./-]*)$`, "$1 in")},
	}
})

package validate

import (
	"fmt"
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"

	"liftlint/internal/nearest"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// The ends of the addresses of schemas whose values are worded apart: ids, what may
// also be a point of a beam, and figures as reports print them.
const (
	figureLocation = "#/$defs/figure" // a figure with its unit, in words of a report
	idLocation     = "common" + suffix + "#/$defs/id"
	placeLocation  = "common" + suffix + "#/$defs/place"
)

// unframed is the pattern of names that are looked up, which a blank at an end
// would make another.
const unframed = `^\S(.*\S)?$`

func (x *explainer) unit(c complaint) {
	r, ok := c.schema.Extensions["quantity"].(quantityRule)
	if !ok {
		return
	}
	if c.node.Kind == yamldoc.Number && r.sign != quantity.AnySign && strings.HasPrefix(c.node.Text, "-") {
		x.say(Unit, c.node, "%s has no unit and is negative; write such as %s", quote(c.node.Text), quote(r.kind.Example()))
		return
	}
	if err := r.kind.CheckSign(c.node.Text, r.sign); err != nil {
		x.say(Unit, c.node, "%v", err)
	}
}

// tooShortToGuess is the length of a value from which no other is guessed: of
// two letters, uk would lead to us and so to another code of practice.
const tooShortToGuess = 2

func (x *explainer) notAllowed(c complaint) {
	var names []string
	for _, v := range c.schema.Enum {
		names = append(names, fmt.Sprint(v))
	}
	problem := quote(c.node.Text) + " is none of the values here"
	if k, ok := nearest.Name(c.node.Text, names); ok && len(c.node.Text) > tooShortToGuess && len(c.node.Text) <= longestMisspelt {
		problem += ": did you mean " + quote(k) + "?"
		if len(names) == 1 {
			x.say(NotAllowed, c.node, "%s", problem)
			return
		}
	} else {
		problem += ";"
	}
	x.say(NotAllowed, c.node, "%s %s is allowed", problem, oneOf(c.schema.Enum))
}

// oneOf lists allowed values in the order of the schema.
func oneOf(values []any) string {
	var names []string
	for _, v := range values {
		names = append(names, quote(fmt.Sprint(v)))
	}
	if len(names) == 1 {
		return "only " + names[0]
	}
	return list(names, "or")
}

// version words a plan of another version: the one constant outside kinds.
func (x *explainer) version(c complaint) {
	if c.node.Pointer != "/liftlint" || len(c.schema.Constant) != 1 {
		return
	}
	reads := fmt.Sprint(c.schema.Constant[0])
	have, ok1 := new(big.Rat).SetString(c.node.Text)
	want, ok2 := new(big.Rat).SetString(reads)
	if ok1 && ok2 && have.Cmp(want) > 0 {
		x.say(Version, c.node, "the %s is written for version %s of the format, and this program reads version %s; "+
			"use a newer liftlint. Nothing else was checked", x.what, clean(c.node.Text), reads)
		return
	}
	x.say(Version, c.node, "there is no version %s of the format; write `liftlint: %s`. Nothing else was checked", clean(c.node.Text), reads)
}

func (x *explainer) pattern(c complaint) {
	form, example := "letters, digits, - and _, at most 40 of them, a letter or digit first", asID(c.node.Text)
	switch {
	case strings.HasSuffix(c.schema.Location, idLocation):
	case strings.HasSuffix(c.schema.Location, placeLocation):
		form += "; of a point of a beam, the ids of both with a dot between"
		example = asPlace(c.node.Text)
	case c.schema.Pattern.String() == unframed:
		if c.node.Text == "" {
			x.textLength(c) // said of its length too, and told once
		} else {
			x.say(BadText, c.node, "%s begins or ends with a blank, or has a line break in it; write it without", quote(c.node.Text))
		}
		return
	default:
		return
	}
	if !c.schema.Pattern.MatchString(example) {
		example = "S1"
	}
	x.say(BadID, c.node, "%s is no id (%s); write such as %s", quote(c.node.Text), form, quote(example))
}

// asPlace makes an id, or that of a point of a beam, of a text.
func asPlace(text string) string {
	beam, point, dotted := strings.Cut(text, ".")
	if !dotted {
		return asID(text)
	}
	return asID(beam) + "." + asID(point)
}

// asID makes an id of a text by putting - for all that can't stand in one.
func asID(text string) string {
	parts := strings.FieldsFunc(text, func(r rune) bool {
		return r >= utf8.RuneSelf || r != '_' && r != '-' && (r < '0' || r > '9') && (r|0x20 < 'a' || r|0x20 > 'z')
	})
	return strings.Join(parts, "-")
}

func (x *explainer) textLength(c complaint) {
	if c.node.Text == "" {
		x.say(BadText, c.node, "the text is empty; write something")
		return
	}
	x.say(BadText, c.node, "the text has %s, and at most %d are read; shorten it",
		count(utf8.RuneCountInString(c.node.Text), "character", "characters"), c.schema.MaxLength)
}

func (x *explainer) listLength(c complaint) {
	has, s := len(c.node.Items), c.schema
	limit := "it takes at least " + strconv.Itoa(s.MinItems)
	if c.keyword == "maxItems" {
		limit = "it takes at most " + strconv.Itoa(s.MaxItems)
	}
	what := "the list is empty"
	if has > 0 {
		what = "the list has " + count(has, "entry", "entries")
	}
	x.add(ListLength, x.head(c.node), x.name(c.node.Pointer)+": "+what+"; "+limit)
}

func (x *explainer) outOfRange(c complaint) {
	var limits []string
	s := c.schema
	for _, l := range []struct {
		words string
		at    *big.Rat
	}{{"at least", s.Minimum}, {"more than", s.ExclusiveMinimum}, {"at most", s.Maximum}, {"less than", s.ExclusiveMaximum}} {
		if l.at != nil {
			limits = append(limits, l.words+" "+decimal(l.at))
		}
	}
	x.say(OutOfRange, c.node, "%s is out of range; %s is asked for", quote(c.node.Text), list(limits, "and"))
}

func decimal(r *big.Rat) string {
	f, _ := r.Float64()
	return strconv.FormatFloat(f, 'f', -1, 64)
}

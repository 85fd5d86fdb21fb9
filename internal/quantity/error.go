package quantity

import (
	"strconv"
	"strings"
	"unicode"
)

// Error is a text that cannot be read as the value that was asked for.
type Error struct {
	Kind    Kind   // what was asked for
	Input   string // the text as it came
	Problem string // what is wrong, beginning with the text in quotes
	Allowed string // what may be written instead
	Example string // one text that would be read; empty when Allowed holds it
	Fix     string // the same value rightly written; empty when only its author can know
}

// Error is one sentence: what is wrong, what is allowed, an example.
func (e *Error) Error() string {
	switch {
	case e.Fix != "":
		return e.Problem + "; write `" + e.Fix + "`" // whole: it can be copied
	case e.Example != "":
		return e.Problem + "; " + e.Allowed + ", such as " + quote(e.Example)
	}
	return e.Problem + "; " + e.Allowed
}

// asker builds the errors about one text.
type asker struct {
	kind  Kind
	shown string // the text as its author wrote it
}

func (a asker) problem(what string) string { return quote(a.shown) + " " + what }

// example makes an error that ends in the kind's example.
func (a asker) example(what, allowed string) *Error {
	return a.exampleOf(what, allowed, a.kind.Example())
}

func (a asker) exampleOf(what, allowed, example string) *Error {
	return &Error{Kind: a.kind, Input: a.shown, Problem: a.problem(what), Allowed: allowed, Example: example}
}

// inUnits makes an error that lists the units of the kind.
func (a asker) inUnits(what string) *Error { return a.example(what, a.givenIn()) }

func (a asker) givenIn() string {
	return a.kind.info().noun + " is given in " + list(a.kind.Units(), "or")
}

func (a asker) wrongKind(given Kind) *Error {
	return a.example("is "+given.info().noun, a.kind.info().noun+" is asked for")
}

func (a asker) fix(what, fix string) *Error {
	return &Error{
		Kind: a.kind, Input: a.shown, Problem: a.problem(what),
		Allowed: a.givenIn(), Example: a.kind.Example(), Fix: fix,
	}
}

// longest is how much of a text a message shows, in characters.
const longest = 40

// quote shows text in backticks. What cannot be seen or would break the line
// is written as an escape, and long texts are cut.
func quote(text string) string {
	var b strings.Builder
	b.WriteByte('`')
	n := 0
	for _, r := range text {
		if n++; n > longest {
			b.WriteString("...")
			break
		}
		if r == '`' || r != ' ' && !unicode.IsGraphic(r) || r == unicode.ReplacementChar {
			esc := strconv.QuoteRuneToASCII(r)
			b.WriteString(strings.ReplaceAll(esc[1:len(esc)-1], "`", `\x60`))
			continue
		}
		b.WriteRune(r)
	}
	b.WriteByte('`')
	return b.String()
}

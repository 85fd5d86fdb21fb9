package plangen

import (
	"fmt"
	"strings"
)

// Faulty is a plan with one mistake in it.
type Faulty struct {
	What string // the mistake in words
	Text string
	Rule string // what is to report it
	Line int    // and at which line; 0 where any line will do
}

// seeding makes one kind of mistake.
type seeding struct {
	what string
	rule string
	sow  func(s *sketch, text string) (changed string, line int)
}

// Mistakes is how many kinds of mistake there are.
func Mistakes() int { return len(seedings()) }

// Fault makes a valid plan from the seed and puts one mistake in: which one is
// the seed's remainder by Mistakes.
func Fault(seed uint64) Faulty {
	kinds := seedings()
	k := kinds[seed%uint64(len(kinds))]
	s := newSketch(seed)
	text, line := k.sow(s, s.text())
	return Faulty{What: k.what, Text: text, Rule: k.rule, Line: line}
}

func seedings() []seeding {
	return []seeding{
		{"a misspelt key", "plan/unknown_key", swap("core:", "coer:")},
		{"a mass without its unit", "plan/unit", func(s *sketch, t string) (string, int) { return replace(t, "mass: "+s.mass(s.massT), "mass: 8650") }},
		{"a unit that means three things", "plan/unit", func(s *sketch, t string) (string, int) { return replace(t, "mass: "+s.mass(s.massT), "mass: 8 ton") }},
		{"an attachment that does not exist", "plan/unknown_reference", swap("at: A", "at: Z")},
		{"gear that does not exist", "plan/unknown_reference", swap("down: [S1,", "down: [S9,")},
		{"an id given twice", "plan/duplicate_id", swap("id: K1,", "id: S1,")},
		{"a key given twice", "yaml/duplicate_key", swap("  mass_known_by:", "  mass: 1 t\n  mass_known_by:")},
		{"a tag that lacks its maker", "tag/missing_or_incomplete", swap("maker: loft, ", "")},
		{"a tag that can't be read", "tag/missing_or_incomplete", swap("condition: legible", "condition: illegible")},
		{"an inspection that has run out", "inspection/overdue", swap("inspection: {date: 2026", "inspection: {date: 2024")},
		{"no day of the lift", "input/missing", func(_ *sketch, t string) (string, int) { return drop(t, "  date: ") }},
		{"no mass", "input/missing", func(s *sketch, t string) (string, int) { return drop(t, "  mass: ") }},
		{"no length", "input/missing", func(s *sketch, t string) (string, int) { return cutLength(s, t), 0 }},
		{"an attachment that no leg uses", "route/attachment_unused", func(s *sketch, t string) (string, int) {
			return replace(t, "\ncrane:", fmt.Sprintf("    - {id: SPARE, kind: padeye, %s, rated_load: 2 t}\n\ncrane:", strings.Trim(s.point(s.center), "{}")))
		}},
		{"a load heavier than its slings", "load/over_rated_load", func(s *sketch, t string) (string, int) {
			return replace(t, "mass: "+s.mass(s.massT), "mass: "+s.mass(4*s.massT+2))
		}},
		{"an eye too small", "fit/eye_over_body", func(s *sketch, t string) (string, int) {
			return replace(t, "upper: {length: "+s.length(0.35), "upper: {length: "+s.length(0.04))
		}},
	}
}

// cutLength takes the length of the first sling out.
func cutLength(s *sketch, text string) string {
	end := "\n    "
	if s.flow {
		end = ", "
	}
	text, _ = replace(text, "length: "+s.length(s.legM[0])+end, "")
	return text
}

func swap(old, with string) func(*sketch, string) (string, int) {
	return func(_ *sketch, text string) (string, int) { return replace(text, old, with) }
}

// replace changes the first place and returns its line.
func replace(text, old, with string) (string, int) {
	i := strings.Index(text, old)
	if i < 0 {
		panic("plangen: the plan has no " + old)
	}
	return text[:i] + with + text[i+len(old):], 1 + strings.Count(text[:i], "\n")
}

// drop takes out the first line that begins so.
func drop(text, start string) (string, int) {
	i := strings.Index(text, "\n"+start) + 1
	end := i + strings.IndexByte(text[i:], '\n') + 1
	return text[:i] + text[end:], 0
}

package rulepage

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/policy"
)

// Asked is what a rule asks of a field before it judges.
type Asked struct {
	Field string `json:"field" doc:"The field, dotted."`
	Is    string `json:"is" doc:"What it has to be, in words."`
}

func asked(conditions []policy.Condition) []Asked {
	list := []Asked{}
	for _, c := range conditions {
		list = append(list, Asked{c.Field, c.Allows()})
	}
	return list
}

// readsOf lists the fields without which a rule does not judge: those that may
// be absent, and those that may be a word for unknown.
func readsOf(r *policy.Rule) []string {
	list := append([]string{}, r.Needs...)
	for _, u := range r.Unsaid {
		list = append(list, u.Field)
	}
	slices.Sort(list)
	return slices.Compact(list)
}

// concerns says which records are judged, and on which lifts, with names marked
// as quote does.
func (p Page) concerns(quote func(string) string) string {
	words := "each of the " + quote(p.Judges)
	if len(p.Where) > 0 {
		words += " whose " + conditions(p.Where, quote)
	}
	if len(p.When) > 0 {
		words += ", on lifts whose " + conditions(p.When, quote)
	}
	if len(p.Stages) > 0 {
		words += ", at stage " + strings.Join(p.Stages, " or ")
	}
	return words + "."
}

func conditions(list []Asked, quote func(string) string) string {
	words := make([]string, len(list))
	for i, a := range list {
		words[i] = fmt.Sprintf("%s is %s", quote(a.Field), a.Is)
	}
	return strings.Join(words, ", and whose ")
}

package report

import (
	"cmp"
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/source"
)

// Sentence gives a message a capital and a stop, where it has none.
func Sentence(message string) string {
	if message == "" {
		return "no message is given"
	}
	first, _, _ := strings.Cut(message, " ")
	if c := message[0]; 'a' <= c && c <= 'z' && !strings.ContainsAny(first, "/_.") { // an id stays as it is
		message = strings.ToUpper(message[:1]) + message[1:]
	}
	if strings.ContainsAny(message[len(message)-1:], ".?!") {
		return message
	}
	return message + "."
}

// OneLine joins the lines of a failure.
func OneLine(text string) string {
	one := ""
	for line := range strings.Lines(text) {
		line = strings.Join(strings.Fields(line), " ")
		switch {
		case line == "":
		case one == "":
			one = line
		case strings.HasSuffix(one, ":"):
			one += " " + line
		default:
			one += "; " + line
		}
	}
	return one
}

// Place is a location in the form that terminals and editors follow.
func Place(at source.Location) string {
	switch {
	case !at.Range.IsZero():
		return fmt.Sprintf("%s:%d:%d", at.File, at.Range.From.Line, at.Range.From.Column)
	case at.Pointer != "":
		return at.File + ", at " + at.Pointer
	}
	return at.File
}

// Sources names all the authorities behind a finding.
func Sources(list []finding.Citation) string {
	if len(list) == 0 {
		return "none is given"
	}
	words := make([]string, len(list))
	for i, c := range list {
		words[i] = c.String()
	}
	return strings.Join(words, "; ")
}

// RuleOf names the rule of like findings, the grade reached and the subjects.
func RuleOf(g []finding.Finding) string {
	text := g[0].Rule
	if grade := g[0].Grade; grade != "" {
		text += ", grade " + grade
	}
	if keys := Keys(g); keys != "" {
		text += ", on " + keys
	}
	return text
}

// Outcome words what the run comes to, with its exit code.
func Outcome(run Run) string {
	return fmt.Sprintf("%s (exit code %d).", run.Meaning(), run.Exit())
}

// Totals words the sums over several plans.
func Totals(c Counts) string {
	text := fmt.Sprintf("%s: %d judged", Plural(c.Plans, cmp.Or(c.noun, plan)), c.Judged)
	if c.NotValid > 0 {
		text += fmt.Sprintf(", %d not valid", c.NotValid)
	}
	if c.NotChecked > 0 {
		text += fmt.Sprintf(", %d not checked", c.NotChecked)
	}
	return text + ". " + Found(c)
}

// Found words the findings; that there are none says nothing of the lift.
func Found(c Counts) string {
	text := fmt.Sprintf("%s, %s, %s.", Plural(c.Errors, "error"), Plural(c.Warnings, "warning"), Plural(c.Notes, "note"))
	if aside := c.asideWords(); aside != "" {
		text += " Besides: " + aside + "."
	}
	if c.NotJudged > 0 {
		text += fmt.Sprintf(" Not judged: %s.", Plural(c.NotJudged, "subject"))
	}
	return text
}

// OutcomeOf words what one plan comes to. The exit code is the run's, which a
// plan has only where it is the only one.
func OutcomeOf(run Run, n int) string {
	if len(run.Results) == 1 {
		return Outcome(run)
	}
	alone := Run{Results: run.Results[n : n+1], FailOn: run.FailOn}
	return alone.Meaning() + "."
}

// NameOf is the plan's number and title, as far as it has them.
func NameOf(r *lint.Result) string {
	if r.ID != "" && r.Title != "" {
		return r.ID + ": " + r.Title
	}
	return r.ID + r.Title
}

// DayOf words the day a plan was judged for.
func DayOf(r *lint.Result) string {
	if r.Day == "" {
		return "for a day that is not known"
	}
	return "for " + r.Day
}

// Plural is a number of things.
func Plural(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

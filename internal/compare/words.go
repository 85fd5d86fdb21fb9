package compare

import (
	"fmt"
	"strings"

	"liftlint/internal/report"
)

// headline says of a plan what matters most: which findings came and went.
func headline(p Plan) string {
	switch p.Status {
	case "added":
		if len(p.Findings) == 0 {
			return "Added. Nothing was found by the checks that were made."
		}
		return "Added. " + counted(p)
	case "gone":
		return "Gone: there is nothing to judge any more."
	case "not_judged":
		return notJudgedWords(p)
	}
	return counted(p)
}

func notJudgedWords(p Plan) string {
	if p.New.State != "judged" {
		return "The new revision is not judged (" + spaced(p.New.State) + "): no rule ran on it, and nothing can be told of its findings and figures."
	}
	return "The old revision was not judged (" + spaced(p.Old.State) + "): all findings are new. " + counted(p)
}

// counted sums up the findings by what became of them.
func counted(p Plan) string {
	n := map[string]int{}
	for _, f := range p.Findings {
		n[f.Change]++
	}
	var parts []string
	for _, c := range changes {
		if n[c] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n[c], spaced(c)))
		}
	}
	words := "No finding changed."
	if len(parts) > 0 {
		words = "Findings: " + strings.Join(parts, ", ") + "."
	}
	return words + unjudgedWords(p.Unjudged) + judgedWords(p.Judged) + grownWords(p.Grown)
}

// unjudgedWords count what was met and is not judged any more, and the rules that
// do not judge it.
func unjudgedWords(list []Subject) string {
	rules := map[string]bool{}
	for _, s := range list {
		rules[s.Rule] = true
	}
	if len(list) == 0 {
		return ""
	}
	return fmt.Sprintf(" Not judged any more: %s that %s met before.", report.Plural(len(list), "subject"), report.Plural(len(rules), "rule"))
}

// judgedWords say that a plan is judged otherwise, and whether more mildly.
func judgedWords(list []Ruling) string {
	n := 0
	for _, r := range list {
		if r.Milder {
			n++
		}
	}
	switch {
	case n > 0:
		return fmt.Sprintf(" Judged more mildly: in %s.", report.Plural(n, "way"))
	case len(list) > 0:
		return " It is judged otherwise than before."
	}
	return ""
}

func spaced(word string) string { return strings.ReplaceAll(word, "_", " ") }

// filesOf names both revisions.
func filesOf(p Plan) string {
	switch {
	case p.Old == nil:
		return p.New.File
	case p.New == nil || p.Old.File == p.New.File:
		return p.Old.File
	}
	return p.Old.File + " -> " + p.New.File
}

// titleOf is the plan's number and title, as it is.
func titleOf(p Plan) string {
	r := p.New
	if r == nil {
		r = p.Old
	}
	if r.ID != "" && r.Title != "" {
		return r.ID + ": " + r.Title
	}
	return r.ID + r.Title
}

// figureRows are a table of the figures below a row of heads.
func figureRows(list []Figure) [][]string {
	rows := [][]string{{"of", "figure", "before", "now", "by"}}
	for _, f := range list {
		rows = append(rows, []string{f.Of, f.What, orDash(spaced(f.OldText)), orDash(spaced(f.NewText)), by(f)})
	}
	return rows
}

func orDash(text string) string {
	if text == "" {
		return "-"
	}
	return text
}

// by is how much a figure grew or shrank, where that tells something: of a place it
// does not.
func by(f Figure) string {
	if f.Old == nil || f.New == nil || *f.Old <= 0 || *f.New <= 0 || strings.HasPrefix(f.Field, "center_of") || strings.HasSuffix(f.Field, "_deg") {
		return ""
	}
	return fmt.Sprintf("%+.1f %%", 100*(*f.New / *f.Old - 1))
}

// gearLine tells what became of an item.
func gearLine(g Gear) string {
	name := g.ID + ", " + spaced(g.Kind)
	if g.Change == "changed" {
		return name + ": " + wordsOf(g.Fields)
	}
	return name + ": " + g.Change
}

func wordsOf(list []Word) string {
	texts := make([]string, len(list))
	for i, w := range list {
		texts[i] = w.What + " " + change(w)
	}
	return strings.Join(texts, "; ")
}

// change words what something was and is.
func change(w Word) string {
	switch {
	case w.Old == nil:
		return quoted(*w.New) + " (was not given)"
	case w.New == nil:
		return "taken out (was " + quoted(*w.Old) + ")"
	}
	return quoted(*w.New) + " (was " + quoted(*w.Old) + ")"
}

// longestText is how much is shown of what is written; JSON has all.
const longestText = 200

func quoted(text string) string {
	if len(text) > longestText {
		text = strings.ToValidUTF8(text[:longestText], "") + "..."
	}
	if text == "" {
		return `""`
	}
	return text
}

// totals sum up the comparison.
func totals(c Comparison) string {
	words := fmt.Sprintf("%s, %d the same", report.Plural(c.Same+len(c.Plans)+c.NotCompared, "plan"), c.Same)
	if c.NotCompared > 0 {
		words += fmt.Sprintf(", %d not compared", c.NotCompared)
	}
	return fmt.Sprintf("%s. %s (exit code %d).", words, outcomeWords(c), c.Exit)
}

func outcomeWords(c Comparison) string {
	switch report.Exit(c.Exit) {
	case report.Clean:
		return "Nothing of severity " + c.FailOn + " or worse that counts is new, worse than before, or not judged any more, or judged more mildly; that says nothing of what was there before"
	case report.Findings:
		return "There is something new or worse, of severity " + c.FailOn + " or worse, or that is not judged any more, or judged more mildly"
	case report.Unchecked:
		return "Something could not be compared"
	}
	return "There was no plan to compare"
}

// The heads of the lists.
const (
	headUnjudged = "Met before, and not judged any more"
	headFigures  = "Figures"
	headGear     = "Gear"
	headWritten  = "Written otherwise"
	headJudged   = "Judged otherwise"
)

// rulingLine tells of what a plan is judged by.
func rulingLine(r Ruling) string {
	switch {
	case r.Old != nil || r.New != nil:
		return r.What + ": " + change(Word{What: r.What, Old: r.Old, New: r.New}) + milderWords(r)
	case strings.HasPrefix(r.What, "there is "):
		return r.What
	}
	return r.What + ": changed"
}

func milderWords(r Ruling) string {
	if r.Milder {
		return ", which is milder"
	}
	return ""
}

func wordLine(w Word) string { return w.What + ": " + change(w) }

func lines[T any](list []T, line func(T) string) []string {
	var out []string
	for _, x := range list {
		out = append(out, line(x))
	}
	return out
}

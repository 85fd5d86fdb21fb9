package rulepage

import (
	"fmt"
	"strings"

	"liftlint/internal/quantity"
)

const textWidth = 80

// Text lays a page out for reading on a terminal.
func (p Page) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\n%s\n\n%s\n\n", p.Title, p.ID, wrap(p.Description, ""))
	if p.BuiltIn {
		fmt.Fprintf(&b, "Severity: %s. Built in: it can be neither waived nor lowered.\n", p.Profiles[0].Grades[0].Severity)
	} else {
		fmt.Fprintln(&b, wrap("Judges "+p.concerns(func(name string) string { return name }), ""))
		if len(p.Reads) > 0 {
			fmt.Fprintln(&b, wrap("Not judged where one of these is not known: "+strings.Join(p.Reads, ", ")+".", ""))
		}
		if !p.Waivable {
			fmt.Fprintln(&b, "A plan can't waive it.")
		}
		if !p.Lowerable {
			fmt.Fprintln(&b, "It can't be lowered or switched off.")
		}
		fmt.Fprintln(&b)
		for _, s := range p.Profiles {
			b.WriteString(s.text(p.Title))
		}
	}
	for _, x := range p.Examples {
		b.WriteString("\n" + x.text())
	}
	fmt.Fprintln(&b, "\nOn the authority of")
	for _, c := range p.Sources {
		fmt.Fprintln(&b, wrap(c.String(), "  "))
	}
	return b.String()
}

// text lists severities and parameters; a grade by its own title too, where it has
// another than the rule.
func (s ProfileSettings) text(title string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "Profile %s\n", s.Profile)
	if s.Off != "" {
		fmt.Fprintf(&b, "  switched off: %s\n", s.Off)
		return b.String()
	}
	for _, g := range s.Grades {
		fmt.Fprintf(&b, "  %-8s", g.Severity)
		if v, ok := s.value(g.Limit); ok {
			fmt.Fprintf(&b, " by %s %s", g.Limit, v)
		} else if g.Limit != "" {
			fmt.Fprintf(&b, " by %s", g.Limit)
		}
		if g.Name != "" {
			fmt.Fprintf(&b, " (%s)", g.words(title))
		}
		b.WriteString("\n")
	}
	for _, x := range s.Params {
		if !s.isLimit(x.Name) {
			v, _ := s.value(x.Name)
			fmt.Fprintln(&b, wrap(x.Name+": "+v, "  "))
		}
	}
	return b.String()
}

// words name a grade, and give its title where that is another than the rule's.
func (g GradeLine) words(title string) string {
	name := strings.ReplaceAll(g.Name, "_", " ")
	if g.Title == title || g.Title == "" {
		return name
	}
	return name + ": " + g.Title
}

func (s ProfileSettings) isLimit(name string) bool {
	for _, g := range s.Grades {
		if g.Limit == name {
			return true
		}
	}
	return false
}

func (s ProfileSettings) value(name string) (string, bool) {
	for _, p := range s.Params {
		if p.Name != name {
			continue
		}
		if list, ok := p.Value.([]string); ok {
			return strings.Join(list, ", "), true
		}
		if v, ok := p.Value.(float64); ok {
			if text, ok := quantity.FormatSuffix(name, v, quantity.Metric); ok {
				return text, true
			}
		}
		return fmt.Sprint(p.Value), true
	}
	return "", false
}

// wrap breaks words into lines of the Page's width, all behind the indent.
func wrap(words, indent string) string {
	var b strings.Builder
	line := indent
	for _, w := range strings.Fields(words) {
		if len(line)+1+len(w) > textWidth && line != indent {
			b.WriteString(line + "\n")
			line = indent
		}
		if line != indent {
			line += " "
		}
		line += w
	}
	b.WriteString(line)
	return b.String()
}

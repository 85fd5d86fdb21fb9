package rulepage

import (
	"cmp"
	"fmt"
	"strings"
)

// Markdown lays a page out as the README that stands beside its rule.
func (p Page) Markdown() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n`%s`\n\n%s\n\n", p.Title, p.ID, wrap(p.Description, ""))
	b.WriteString("It judges " + p.concerns(func(name string) string { return "`" + name + "`" }))
	if len(p.Reads) > 0 {
		fmt.Fprintf(&b, " Where one of these is not known it does not judge, and says so: %s.", code(p.Reads))
	}
	b.WriteString("\n")
	if !p.Lowerable {
		b.WriteString("It can't be lowered or switched off.\n")
	}
	if !p.Waivable {
		b.WriteString("A plan can't waive it.\n")
	}
	p.limits(&b)
	for _, x := range p.Examples {
		x.markdown(&b)
	}
	b.WriteString("\n## On the authority of\n\n")
	for _, c := range p.Sources {
		fmt.Fprintf(&b, "- %s\n", c.String())
	}
	return b.String()
}

func code(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = "`" + w + "`"
	}
	return strings.Join(quoted, ", ")
}

// limits is a table of severities and what they are judged by, and one of the
// parameters, a column for each profile.
func (p Page) limits(b *strings.Builder) {
	b.WriteString("\n## Severities and limits\n\n|")
	for _, s := range p.Profiles {
		fmt.Fprintf(b, " | %s", s.Profile)
	}
	b.WriteString(" |\n|" + strings.Repeat("---|", len(p.Profiles)+1) + "\n")
	for _, g := range p.grades() {
		fmt.Fprintf(b, "| %s |", cmp.Or(g.words(p.Title), "severity"))
		for _, s := range p.Profiles {
			fmt.Fprintf(b, " %s |", s.grade(g.Name))
		}
		b.WriteString("\n")
	}
	for _, name := range p.paramNames() {
		fmt.Fprintf(b, "| `%s` |", name)
		for _, s := range p.Profiles {
			v, _ := s.value(name)
			fmt.Fprintf(b, " %s |", v)
		}
		b.WriteString("\n")
	}
}

// grades are those of all profiles, each once.
func (p Page) grades() []GradeLine {
	var list []GradeLine
	seen := map[string]bool{}
	for _, s := range p.Profiles {
		for _, g := range s.Grades {
			if !seen[g.Name] {
				seen[g.Name] = true
				list = append(list, g)
			}
		}
	}
	return list
}

func (p Page) paramNames() []string {
	var names []string
	for _, x := range p.Profiles[0].Params { // the same in all
		names = append(names, x.Name)
	}
	return names
}

// grade is the severity of a grade and what it is judged by; of the rule, where
// it has no grades and the name is empty.
func (s ProfileSettings) grade(name string) string {
	if s.Off != "" {
		return "off: " + s.Off
	}
	for _, g := range s.Grades {
		if g.Name == name && g.Limit != "" {
			return fmt.Sprintf("%s by `%s`", g.Severity, g.Limit)
		}
		if g.Name == name {
			return string(g.Severity)
		}
	}
	return ""
}

func (x Example) markdown(b *strings.Builder) {
	head, says := "Broken by", x.Says
	if x.Kind == "meets" {
		head = "Met by"
	}
	fmt.Fprintf(b, "\n## %s %s\n", head, x.What)
	if len(x.Set) > 0 {
		b.WriteString("\n```yaml\n")
		for _, c := range x.Set {
			if c.To == "" {
				fmt.Fprintf(b, "# %s: taken out\n", c.At)
				continue
			}
			fmt.Fprintf(b, "# %s\n%s\n", c.At, c.To)
		}
		b.WriteString("```\n")
	}
	for _, s := range says {
		fmt.Fprintf(b, "\n> %s\n", s)
	}
	if len(says) == 0 {
		b.WriteString("\nNothing is found.\n")
	}
}

// Index lists pages by topic, each with a link to the page beside its rule,
// below a paragraph of introduction.
func Index(pages []Page, intro string) string {
	var b strings.Builder
	b.WriteString("# The rules\n\n" + intro + "\n")
	last := ""
	for _, p := range pages {
		topic, _, _ := strings.Cut(p.ID, "/")
		if topic != last {
			fmt.Fprintf(&b, "\n## %s\n\n| rule | finds | severity |\n|---|---|---|\n", topic)
			last = topic
		}
		fmt.Fprintf(&b, "| [%s](%s/README.md) | %s | %s |\n", p.ID, p.ID, p.Title, p.worst())
	}
	return b.String()
}

// worst is the worst severity in each profile, once where they agree.
func (p Page) worst() string {
	var words []string
	for _, s := range p.Profiles {
		word := "off"
		if s.Off == "" {
			word = string(s.Grades[0].Severity)
		}
		if len(words) == 0 || words[len(words)-1] != word {
			words = append(words, word)
		}
	}
	return strings.Join(words, " or ")
}

package sarif

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/report"
	"liftlint/internal/report/markdown"
)

// descriptor tells of a rule: what it asks for, by which limits, on whose
// authority.
func (e *entry) descriptor() descriptor {
	topic, _, _ := strings.Cut(e.id, "/")
	d := descriptor{
		ID:                   e.id,
		DeprecatedIDs:        e.formerly,
		ShortDescription:     shown(e.title),
		DefaultConfiguration: &configuration{Level: level(e.level), Parameters: e.parameters()},
		Help:                 &text{Text: e.help(message, "%s", "- "), Markdown: e.help(markdown.Text, "**%s**", "- ")},
		Properties:           map[string]any{"tags": []string{topic}, "citations": citations(e.sources)},
	}
	if e.why != "" {
		d.FullDescription = shown(e.why)
	}
	if !e.on {
		off := false
		d.DefaultConfiguration.Enabled = &off
	}
	return d
}

// parameters are the rule's limits, where all plans were judged by the same.
func (e *entry) parameters() map[string]any {
	if e.rule == nil || e.differs || len(e.rule.Params) == 0 {
		return nil
	}
	all := map[string]any{}
	for _, p := range e.rule.Params {
		all[p.Name] = p.Value
	}
	return all
}

// help is what a reader wants who meets a finding of the rule. escape makes text
// harmless, strong is the form of a heading.
func (e *entry) help(escape func(string) string, strong, item string) string {
	var b strings.Builder
	if e.why != "" {
		b.WriteString(escape(e.why) + "\n\n")
	}
	e.limits(&b, escape, strong, item)
	fmt.Fprintf(&b, strong+"\n\n", "On the authority of")
	if len(e.sources) == 0 {
		b.WriteString(item + "none is given\n")
	}
	for _, c := range e.sources {
		b.WriteString(item + escape(c.String()) + "\n")
	}
	b.WriteString("\n" + escape("More: liftlint explain "+e.id) + "\n")
	return b.String()
}

func (e *entry) limits(b *strings.Builder, escape func(string) string, strong, item string) {
	switch {
	case e.rule == nil || len(e.rule.Params) == 0:
		return
	case e.differs:
		b.WriteString("The plans of this run were judged by different limits of this rule.\n\n")
		return
	}
	fmt.Fprintf(b, strong+"\n\n", "Limits")
	for _, p := range e.rule.Params {
		b.WriteString(item + escape(p.Name+": "+words(p.Value)) + "\n")
	}
	b.WriteString("\n")
}

// words prints a parameter's value.
func words(v any) string {
	if list, ok := v.([]string); ok {
		return strings.Join(list, ", ")
	}
	return fmt.Sprint(v)
}

func citations[C fmt.Stringer](list []C) []string {
	out := make([]string, len(list))
	for i, c := range list {
		out[i] = report.Visible(c.String())
	}
	return out
}

// level is one of the three words; what is none of them is an error.
func level(s finding.Severity) string {
	if s == finding.Warning || s == finding.Note {
		return string(s)
	}
	return string(finding.Error)
}

package annotate

import (
	"fmt"
	"strings"

	"liftlint/internal/report"
)

// command is the line that the service obeys.
func (n note) command(level string) string {
	var list []string
	add := func(name, value string) {
		if value != "" {
			list = append(list, name+"="+property(value))
		}
	}
	number := func(name string, value int) {
		if value > 0 && n.file != "" {
			list = append(list, fmt.Sprintf("%s=%d", name, value))
		}
	}
	add("file", n.file)
	number("line", n.line)
	number("col", n.column)
	number("endLine", n.endLine)
	number("endColumn", n.endColumn)
	add("title", n.title)
	return fmt.Sprintf("::%s %s::%s", level, strings.Join(list, ","), data(n.message))
}

// data escapes the text of a command. Only ends of lines that were meant are
// kept; what is hidden is spelled out.
func data(text string) string {
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		lines[i] = strings.ReplaceAll(report.Visible(l), "%", "%25")
	}
	return strings.Join(lines, "%0A")
}

// property escapes the value of a property, which has one line.
func property(text string) string {
	return strings.NewReplacer("%", "%25", ":", "%3A", ",", "%2C").Replace(report.Visible(text))
}

// plain writes a line for people that is no command.
func plain(b *strings.Builder, text string) {
	text = report.Visible(text)
	if strings.HasPrefix(strings.TrimLeft(text, " "), "::") {
		text = strings.Replace(text, ":", report.Escape(':'), 1)
	}
	b.WriteString(text + "\n")
}

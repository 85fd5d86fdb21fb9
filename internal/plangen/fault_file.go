package plangen

import "strings"

// lines is a text and the line of it that a mistake is made at.
type lines struct {
	text string
	line int
}

// change puts another line, or several, in place of the line.
func (l *lines) change(f func(line string) string) string {
	all := strings.Split(l.text, "\n")
	all[l.line-1] = f(all[l.line-1])
	return strings.Join(all, "\n")
}

// append adds lines at the end and points at the first of them.
func (l *lines) append(more string) string {
	l.line = strings.Count(l.text, "\n") + 1
	return l.text + more
}

func mass(p *plot) *entry { return p.load().at("mass") }

// fileMistakes are those that YAML itself forbids, or this reading of it. The
// load is deep, so its mass always stands on a line of its own.
func fileMistakes() []mistake {
	return []mistake{
		{what: "a tab for indentation", rule: "yaml/tab_indent", sow: mass, scar: func(l *lines) string {
			return l.change(func(line string) string { return "\t" + strings.TrimSpace(line) })
		}},
		{what: "a key given twice", rule: "yaml/duplicate_key", sow: mass, scar: func(l *lines) string {
			l.line++
			text := *l
			text.line--
			return text.change(func(line string) string { return line + "\n" + line })
		}},
		{what: "an anchor", rule: "yaml/alias", sow: mass, scar: func(l *lines) string {
			return l.change(func(line string) string { return strings.Replace(line, "mass: ", "mass: &m ", 1) })
		}},
		{what: "a tag of YAML", rule: "yaml/tag", sow: mass, scar: func(l *lines) string {
			return l.change(func(line string) string { return strings.Replace(line, "mass: ", "mass: !!str ", 1) })
		}},
		{what: "bytes that are not UTF-8", rule: "yaml/encoding", sow: mass, scar: func(l *lines) string {
			return l.change(func(line string) string { return line + " # 60 \xb0" })
		}},
		{what: "a bracket that is not closed", rule: "yaml/syntax", sow: mass, scar: func(l *lines) string {
			return l.change(func(line string) string {
				before, _, _ := strings.Cut(line, ":")
				return before + ": {kg: 8650"
			})
		}},
		{what: "a second document", rule: "yaml/several_documents", sow: mass, scar: func(l *lines) string {
			return l.append("---\nliftlint: 1\n")
		}},
	}
}

package markdown

import (
	"regexp"
	"strings"

	"liftlint/internal/report"
)

// acting are the characters by which CommonMark and the tables, links and
// mentions of GitHub's dialect are written anywhere in a line.
const acting = "\\`*_[]<>|~$&{}"

var (
	// startOfBlock is what makes a list, a heading or a rule where a block begins.
	startOfBlock = regexp.MustCompile(`^(?:([-+#=])|(\d{1,9})([.)])(\s|$))`)
	// nothing splits a word for those who look for names and numbers in it, and
	// shows nothing.
	nothing = "<!-- -->"
	number  = regexp.MustCompile(`#(\d)`)
	address = regexp.MustCompile(`(?i)\b(www)\.`)
)

// Text makes a text harmless in Markdown: it shows as it is written but for blanks
// around it, notifies nobody and links to nothing. What is hidden is spelled out.
func Text(text string) string {
	text = strings.Trim(report.Visible(text), " ")
	var b strings.Builder
	for _, r := range text {
		if r < 0x80 && strings.ContainsRune(acting, r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	text = startOfBlock.ReplaceAllString(b.String(), `$2\$1$3$4`)
	text = strings.ReplaceAll(text, "://", `\://`)
	text = address.ReplaceAllString(text, `$1\.`)
	text = number.ReplaceAllString(text, "#"+nothing+"$1")
	return strings.ReplaceAll(text, "@", "@"+nothing)
}

var backticks = regexp.MustCompile("`+")

// Code shows a text as code, in which nothing acts. It is not for tables: a bar in
// it would end a cell.
func Code(text string) string {
	text = report.Visible(text)
	if text == "" {
		return ""
	}
	fence := "`"
	for _, run := range backticks.FindAllString(text, -1) {
		if len(run) >= len(fence) {
			fence = run + "`"
		}
	}
	if strings.HasPrefix(text, "`") || strings.HasSuffix(text, "`") || strings.HasPrefix(text, " ") && strings.HasSuffix(text, " ") {
		text = " " + text + " "
	}
	return fence + text + fence
}

package sarif

import (
	"regexp"
	"strings"

	"liftlint/internal/report"
)

// placeholder is what readers replace in a message by an argument (SARIF 2.1.0,
// 3.11.5), and doubled braces are how it is written as it is. Braces of a value
// from a plan stay single, for not all readers know of the doubling.
var placeholder = regexp.MustCompile(`\{(\d+)\}`)

// message makes a text harmless in a plain text message: what is hidden is spelled
// out, line ends too, and nothing in it makes a link (3.11.6) or a placeholder.
func message(words string) string {
	words = placeholder.ReplaceAllString(report.Visible(words), "{{$1}}")
	return strings.ReplaceAll(words, "](", `\](`)
}

func shown(words string) *text { return &text{Text: message(words)} }

// inOneLine joins the lines of a text of liftlint's own.
func inOneLine(words string) string { return strings.Join(strings.Fields(words), " ") }

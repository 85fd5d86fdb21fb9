package markdown

import (
	"html"
	"regexp"
	"strings"
	"testing"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	unsafe "github.com/yuin/goldmark/renderer/html"
	"github.com/yuin/goldmark/text"
	"pgregory.net/rapid"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// reader reads Markdown as GitHub's dialect has it: an implementation of
// CommonMark that is not this project's.
var reader = goldmark.New(goldmark.WithExtensions(extension.GFM), goldmark.WithRendererOptions(unsafe.WithUnsafe()))

// read gives the HTML of a text in Markdown, and the kinds of its nodes.
func read(t fataler, markdown string) (string, map[string]int) {
	var b strings.Builder
	source := []byte(markdown)
	root := reader.Parser().Parse(text.NewReader(source))
	kinds := map[string]int{}
	err := ast.Walk(root, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if raw, ok := n.(*ast.RawHTML); ok && string(raw.Segments.Value(source)) == nothing {
			return ast.WalkContinue, nil
		}
		if entering {
			kinds[n.Kind().String()]++
		}
		return ast.WalkContinue, nil
	})
	if err == nil {
		err = reader.Renderer().Render(&b, source, root)
	}
	if err != nil {
		t.Fatalf("%v", err)
	}
	return b.String(), kinds
}

var tag = regexp.MustCompile(`<[^>]*>`)

// shown is what a reader of the HTML sees.
func shown(page string) string { return html.UnescapeString(tag.ReplaceAllString(page, "")) }

// acts lists what text from a plan must never make.
func acts(kinds map[string]int) string {
	for _, kind := range []string{"Link", "AutoLink", "Image", "HTMLBlock", "RawHTML", "CodeBlock", "FencedCodeBlock", "Blockquote", "ThematicBreak", "Strikethrough", "TaskCheckBox", "LinkReferenceDefinition"} {
		if kinds[kind] > 0 {
			return kind
		}
	}
	return ""
}

// TestText: in a paragraph, in a list and in a cell, a text shows as it is written
// and does nothing else.
func TestText(t *testing.T) {
	for _, words := range []string{
		"- a", "+ a", "* a", "1. a", "1) a", "12.", "# a", "#", "---", "===", "> a", "    a", "~~~", "```", "29.3 deg", "1.5",
		"**a**", "_a_", "~~a~~", "`a`", "[a](b)", "[a]: b", "![a](b)", "[a][b]", "[^1]", "- [x] a", "<b>a</b>", "<!-- a -->", "<http://example.invalid>", "&lt;", "&#35;", "a | b", `a \| b`, `a \`, `\*a\*`,
		"http://example.invalid", "https://example.invalid/a", "www.example.invalid", "WWW.example.invalid", "ftp://example.invalid", "a@example.invalid", "mailto:a@example.invalid", "$a$", "{a}",
	} {
		showsAsWritten(t, words)
	}
	rapid.Check(t, func(t *rapid.T) { showsAsWritten(t, reporttest.HostileText().Draw(t, "text")) })
}

type fataler interface{ Fatalf(string, ...any) }

func showsAsWritten(t fataler, words string) {
	want := strings.TrimSpace(report.Visible(words))
	for name, c := range map[string]struct{ before, after, around string }{
		"paragraph": {"", "", "%s"},
		"list":      {"- ", "", "%s"},
		"cell":      {"| head |\n|---|\n| ", " |", "head%s"},
		"strong":    {"a **b: ", ".** c", "a b: %s. c"},
	} {
		page, kinds := read(t, c.before+Text(words)+c.after)
		before, after, _ := strings.Cut(c.around, "%s")
		got := strings.TrimPrefix(strings.Join(strings.Fields(shown(page)), " "), strings.TrimSpace(before))
		got = strings.TrimSpace(strings.TrimSuffix(got, after))
		if got != strings.Join(strings.Fields(want), " ") {
			t.Fatalf("%s: %q shows as %q in\n%s", name, want, got, page)
		}
		if what := acts(kinds); what != "" || kinds["Emphasis"] > 0 && name != "strong" || kinds["Emphasis"] > 1 || kinds["CodeSpan"] > 0 || kinds["Heading"] > 0 {
			t.Fatalf("%s: %q makes %v", name, words, kinds)
		}
		if name == "cell" && kinds["TableCell"] != 2 || name == "list" && kinds["ListItem"] != 1 || name != "list" && kinds["ListItem"] > 0 {
			t.Fatalf("%s: %q makes %v", name, words, kinds)
		}
	}
}

// TestCode: code shows as it is written, whatever marks are in it.
func TestCode(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := "x" + reporttest.HostileText().Draw(t, "text")
		page, kinds := read(t, "- "+Code(words)+" rest")
		if got, want := strings.TrimSpace(shown(page)), report.Visible(words)+" rest"; got != want || kinds["CodeSpan"] != 1 || acts(kinds) != "" {
			t.Fatalf("%q shows as %q, %v", want, got, kinds)
		}
	})
}

// TestWhatOnlyGitHubReads: names, numbers and formulas are broken up where that
// service looks for them and the reader here does not.
func TestWhatOnlyGitHubReads(t *testing.T) {
	page, _ := read(t, Text("@someone and @a/team, #12 and a#12"))
	if regexp.MustCompile(`@\w|#\d`).MatchString(page) || shown(page) != "@someone and @a/team, #12 and a#12\n" {
		t.Error(page)
	}
	if got := Text("$x$"); got != `\$x\$` {
		t.Error(got)
	}
}

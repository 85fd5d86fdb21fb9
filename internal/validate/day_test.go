package validate

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

// Whatever day a message proposes exists.
func TestProposedDaysExist(t *testing.T) {
	proposed := regexp.MustCompile("`([0-9]{4}-[0-9]{2}-[0-9]{2})`")
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`([0-9]{4}[-/. ][0-9]{1,2}[-/. ][0-9]{1,2}|[0-9]{1,2}[-/. ][0-9]{1,2}[-/. ][0-9]{4}|[0-9]{4}-[01][0-9]-[0-3][0-9]T.*)`).Draw(t, "text")
		if isDay(text) {
			t.Skip("a day")
		}
		for _, m := range proposed.FindAllStringSubmatch(badDay(text), -1) {
			if m[1] != text && !isDay(m[1]) {
				t.Fatal(badDay(text))
			}
		}
	})
}

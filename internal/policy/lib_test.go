package policy_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"liftlint/internal/policy"
)

// libRule goes over gear with a body of its own, and has the parameters that
// this reads.
func libRule(body string) string {
	params, read := "", ""
	for _, p := range []string{"wanted: [maker, serial]", "label: color_code"} {
		name, _, _ := strings.Cut(p, ":")
		if strings.Contains(body, "p."+name) {
			params += "#     " + p + "\n"
		}
	}
	if params != "" {
		params, read = "#   params:\n"+params, "import data.params.own.try as p\n"
	}
	return `# METADATA
# title: t
# description: A rule of a company's own, for this test.
# custom:
#   severity: error
#   over: gear
` + params + `#   message: "{id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.own.try

import data.liftlint.lib
` + read + `
finding contains item.key if {
	some item in input.gear
	` + body + `
}
`
}

func loadLib(body string) (*policy.Pack, error) {
	return policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"own/try/rule.rego": libRule(body)})})
}

// TestLibrary puts each function of the library to the facts, for and against.
func TestLibrary(t *testing.T) {
	d := level()
	d.Gear = d.Gear[:1]
	g := &d.Gear[0]
	g.LengthM, g.DiameterM, g.Uses = ptr(4.0), ptr(0.02), 1
	g.Labels = []string{"color_code=green", "note=a=b", "empty="}
	g.Tag.Shows = []string{"maker", "diameter"}
	for _, c := range []struct {
		body string
		want bool
	}{
		{`lib.differ(item.length_m, 3.9, 0.01)`, true},
		{`lib.differ(item.length_m, 3.9, 0.03)`, false},
		{`lib.differ(item.length_m, -4, 0.5)`, true},
		{`lib.between(item.length_m, 4, 5)`, true},
		{`lib.between(item.length_m, 3, 4)`, true},
		{`lib.between(item.length_m, 4.01, 5)`, false},
		{`not lib.between(item.length_m, 4.01, 5)
	item.length_m > 0`, true},
		{`count(lib.missing(p.wanted, item.tag.shows)) == 1`, true},
		{`"serial" in lib.missing(p.wanted, item.tag.shows)`, true},
		{`"maker" in lib.missing(p.wanted, item.tag.shows)`, false},
		{`"maker" in lib.shared(p.wanted, item.tag.shows)`, true},
		{`"serial" in lib.shared(p.wanted, item.tag.shows)`, false},
		{`lib.has_label(item.labels, p.label)`, true},
		{`lib.has_label(item.labels, "color")`, false},
		{`not lib.has_label(item.labels, "color")`, true},
		{`lib.label(item.labels, p.label) == "green"`, true},
		{`lib.label(item.labels, "note") == "a=b"`, true},
		{`lib.label(item.labels, "empty") == ""`, true},
		{`lib.label(item.labels, "none") == ""`, true},
		{`lib.label(item.labels, "none") != "green"`, true},
	} {
		p, err := loadLib(c.body)
		if err != nil {
			t.Errorf("%s: %v", c.body, err)
			continue
		}
		got := judge(t, p, d)["own/try"].Outcomes[0].State == policy.Broken
		if got != c.want {
			t.Errorf("%s is %t", c.body, got)
		}
	}
}

// TestLibraryOfTheUnknown: a figure that is not known is not judged, whatever
// function it is handed to.
func TestLibraryOfTheUnknown(t *testing.T) {
	d := level()
	d.Gear = d.Gear[:1]
	d.Gear[0].LengthM = nil
	for _, body := range []string{`lib.between(item.length_m, 4, 5)`, `lib.differ(item.length_m, 4, 0.1)`} {
		p, err := loadLib(body)
		if err != nil {
			t.Fatal(err)
		}
		if got := judge(t, p, d)["own/try"].Outcomes[0]; got.State != policy.NotJudged || fmt.Sprint(got.Missing) != "[length_m]" {
			t.Errorf("%s: %+v", body, got)
		}
	}
}

// TestLibraryRefuses: wrong names, numbers and kinds of values, and an unknown
// behind not, are named where they stand.
func TestLibraryRefuses(t *testing.T) {
	for body, want := range map[string]string{
		`lib.difer(item.length_m, 4, 0.1)`:              `"difer" is no function of the library: did you mean "differ"?`,
		`lib.differ(item.length_m, 4)`:                  "lib.differ takes 3 values, found 2",
		`lib.differ(item.id, 4, 0.1)`:                   "lib.differ wants a number in place 1, found text",
		`lib.has_label(item.id, "x")`:                   "lib.has_label wants a list in place 1, found text",
		`lib.differ(item.length_m, item.lowest_c, 0.1)`: "one side is in m, the other in c",
		`lib.missing(p.wanted, item.tag.shows)`:         "is a list, and no condition",
		`not lib.between(item.length_m, 4, 5)`:          "item.length_m may be absent, which not or a comprehension would take for false",
		`lib.values(item.labels, "x")`:                  `"values" is no function of the library`,
		`lib.has_label(item, "x")`:                      "item",
	} {
		_, err := loadLib(body)
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s:\ngot  %v\nwant %s", body, err, want)
		}
	}
}

package junit

import (
	"encoding/xml"
	"fmt"
	"strings"

	"liftlint/internal/report"
)

// The elements of a JUnit report as build services read them. There is no
// published standard: the names are those that are common practice.

type testSuites struct {
	XMLName  xml.Name    `xml:"testsuites"`
	Name     string      `xml:"name,attr"`
	Tests    int         `xml:"tests,attr"`
	Failures int         `xml:"failures,attr"`
	Errors   int         `xml:"errors,attr"`
	Skipped  int         `xml:"skipped,attr"`
	Suites   []testSuite `xml:"testsuite"`
}

// testSuite is one plan. It has no time: the same plan gives the same bytes.
type testSuite struct {
	Name       string      `xml:"name,attr"`
	File       string      `xml:"file,attr,omitempty"`
	Tests      int         `xml:"tests,attr"`
	Failures   int         `xml:"failures,attr"`
	Errors     int         `xml:"errors,attr"`
	Skipped    int         `xml:"skipped,attr"`
	Properties *properties `xml:"properties"`
	Cases      []testCase  `xml:"testcase"`
	SystemOut  *output     `xml:"system-out"`
}

type properties struct {
	List []property `xml:"property"`
}

// add adds a property, whose name is numbered from the second of that name on: some
// readers keep one of each name.
func (p *properties) add(name, value string) {
	name = report.Visible(name)
	n := 1
	for _, have := range p.List {
		if have.Name == name || strings.HasPrefix(have.Name, name+" (") {
			n++
		}
	}
	if n > 1 {
		name = fmt.Sprintf("%s (%d)", name, n)
	}
	p.List = append(p.List, property{name, report.Visible(value)})
}

type property struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

// testCase is one rule put to a plan. At most one of the three is there.
type testCase struct {
	ClassName string  `xml:"classname,attr"`
	Name      string  `xml:"name,attr"`
	File      string  `xml:"file,attr,omitempty"`
	Line      int     `xml:"line,attr,omitempty"`
	Failure   *answer `xml:"failure"`
	Error     *answer `xml:"error"`
	Skipped   *answer `xml:"skipped"`
	SystemOut *output `xml:"system-out"`
}

type answer struct {
	Message string `xml:"message,attr"`
	Type    string `xml:"type,attr,omitempty"`
	Text    string `xml:",cdata"` // its lines stay lines
}

type output struct {
	Text string `xml:",cdata"`
}

func (s *testSuite) add(c testCase) {
	s.Cases = append(s.Cases, c)
	s.Tests++
	switch {
	case c.Failure != nil:
		s.Failures++
	case c.Error != nil:
		s.Errors++
	case c.Skipped != nil:
		s.Skipped++
	}
}

func (t *testSuites) add(s testSuite) {
	t.Suites = append(t.Suites, s)
	t.Tests += s.Tests
	t.Failures += s.Failures
	t.Errors += s.Errors
	t.Skipped += s.Skipped
}

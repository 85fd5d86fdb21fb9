// Package sarif is the report for programs that gather findings of many tools:
// the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS). There is
// no clock in it and no path of a machine.
package sarif

import (
	"fmt"
	"io"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
)

const (
	schemaURI = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	version   = "2.1.0"
	language  = "en-US"

	// baseID stands for the folder that files are named from. Where it lies is for
	// the reader to say: the name is the one readers know.
	baseID = "%SRCROOT%"

	// columnKind: a column counts code points, as in every place of a plan.
	columnKind = "unicodeCodePoints"
)

// Options say what is reported besides the findings.
type Options struct {
	Rules    []*policy.Rule // those that plans were judged by; a rule stands once for each profile
	Stage    string         // whose severities are the default ones
	Version  string         // of the program; left out where it is none
	Evidence bool           // give results of kind pass, open and notApplicable too
}

// Write writes the report of a run. Files are to be named from the root of the
// repository (see report.Run.RelativeTo). It fails where the writer does, and
// where a plan has no result.
func Write(w io.Writer, r report.Run, o Options) error {
	d, err := build(r, o)
	if err != nil {
		return err
	}
	if err := report.WriteJSON(w, d); err != nil {
		return fmt.Errorf("sarif report: %w", err)
	}
	return nil
}

func build(r report.Run, o Options) (document, error) {
	for _, x := range r.Results {
		if x == nil {
			return document{}, fmt.Errorf("sarif report: there is no result for one plan")
		}
	}
	c := newCatalog(r.Results, o)
	out := run{
		Tool:               tool{c.driver(o)},
		Language:           language,
		Invocations:        []invocation{c.invocation(r)},
		OriginalURIBaseIDs: map[string]artifact{baseID: {Description: &text{Text: "The folder that files are named from, such as the root of the repository."}}},
		Artifacts:          artifacts(r.Results),
		ColumnKind:         columnKind,
		Taxonomies:         c.taxonomies,
		Results:            []result{},
	}
	for _, x := range r.Results {
		out.Results = append(out.Results, c.results(x, o)...)
	}
	suppress(out.Results)
	return document{schemaURI, version, []run{out}}, nil
}

// artifacts lists every plan, so that one without findings is told from one that
// was not looked at.
func artifacts(results []*lint.Result) []artifactEntry {
	list := []artifactEntry{}
	seen := map[string]bool{}
	for _, x := range results {
		if !seen[x.File] {
			seen[x.File] = true
			list = append(list, artifactEntry{file(x.File), []string{"analysisTarget"}})
		}
	}
	return list
}

func file(name string) artifact { return artifact{URI: report.URI(name), URIBaseID: baseID} }

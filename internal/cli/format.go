package cli

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/report/annotate"
	"liftlint/internal/report/jsonreport"
	"liftlint/internal/report/junit"
	"liftlint/internal/report/line"
	"liftlint/internal/report/markdown"
	"liftlint/internal/report/sarif"
	"liftlint/internal/report/summary"
	"liftlint/internal/report/text"
)

// output says how a run is reported and where to.
type output struct {
	env        Environment
	format     *choice
	all        bool   // all rules are named in the account
	evidence   bool   // what is met, not judged and not applicable is reported as a result
	jobSummary bool   // a summary is added to that of a build job
	root       string // the folder that files are named from; empty is that of the repository
}

// newOutput has the formats that stand first, of which the very first is taken where
// none is named, and all others.
func newOutput(e Environment, first ...string) output {
	words := slices.Clone(first)
	for _, w := range []string{"text", "json", "line", "sarif", "junit", "annotations", "markdown", "summary"} {
		if !slices.Contains(words, w) {
			words = append(words, w)
		}
	}
	return output{env: e, format: oneOf(words...)}
}

func (o *output) flags(c *cobra.Command) {
	f := c.Flags()
	f.Var(o.format, "format", "text; json; line, one a finding; sarif; junit; annotations, the commands of a build service; markdown, for a review comment; or summary, by rule and plan, for many plans")
	f.BoolVar(&o.all, "list-checks", false, "name in the text report also the rules that are met and those that do not apply")
	f.BoolVar(&o.evidence, "evidence", false, "in sarif, give also results for what is met, not judged and not applicable")
	f.BoolVar(&o.jobSummary, "job-summary", false, "besides the report, add one in Markdown to the file that the environment variable GITHUB_STEP_SUMMARY names")
	f.StringVar(&o.root, "root", "", "the folder from which sarif, junit, annotations and markdown name files; otherwise that of the repository, the nearest with .git in it")
}

// check refuses options that would do nothing.
func (o *output) check() error {
	switch {
	case o.evidence && o.format.value != "sarif":
		return wrongUsage(errors.New("--evidence goes with --format sarif: the other formats tell of every check as it is"))
	case o.jobSummary && o.env.Getenv(summaryVariable) == "":
		return wrongUsage(fmt.Errorf("--job-summary needs the environment variable %s, which names the file to write to", summaryVariable))
	}
	return nil
}

// summaryVariable is where the build service GitHub Actions names the file of a
// job's summary.
const summaryVariable = "GITHUB_STEP_SUMMARY"

// write reports a run, and gives it back as it was reported: that the summary of the job
// could not be written is a part of it. rules are those that it was judged by.
func (o *output) write(run report.Run, stage string, rules func() ([]*policy.Rule, error)) (report.Run, error) {
	if o.jobSummary {
		if err := o.addSummary(run); err != nil {
			run.Failures = append(slices.Clone(run.Failures), fmt.Sprintf("the summary of the job could not be written: %v", err))
		}
	}
	return run, o.report(run, stage, rules)
}

func (o *output) report(run report.Run, stage string, rules func() ([]*policy.Rule, error)) error {
	w := o.env.Stdout
	switch o.format.value {
	case "text":
		return text.Write(w, run, text.Options{Color: o.env.color(), ListChecks: o.all})
	case "json":
		return jsonreport.Write(w, run)
	case "line":
		return line.Write(w, run)
	case "summary":
		return summary.Write(w, run)
	}
	paths, err := o.paths()
	if err != nil {
		return err
	}
	run = run.RelativeTo(paths)
	switch o.format.value {
	case "sarif":
		list, err := rules()
		if err != nil {
			return err
		}
		return sarif.Write(w, run, sarif.Options{Rules: list, Stage: stage, Version: version(), Evidence: o.evidence})
	case "junit":
		return junit.Write(w, run)
	case "annotations":
		return annotate.Write(w, run)
	case "markdown":
		return markdown.Write(w, run, markdown.Options{Most: markdown.Comment})
	}
	return fmt.Errorf("there is no format %s", o.format.value)
}

// addSummary adds to the summary of a job, which other steps write to as well.
func (o *output) addSummary(run report.Run) (err error) {
	paths, err := o.paths()
	if err != nil {
		return err
	}
	f, err := os.OpenFile(o.env.Getenv(summaryVariable), os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	return markdown.Write(f, run.RelativeTo(paths), markdown.Options{Most: markdown.Summary})
}

// paths are what reports for other programs name files by.
func (o *output) paths() (report.Paths, error) {
	here, err := os.Getwd()
	if err != nil {
		return report.Paths{}, err
	}
	root := o.root
	if root == "" {
		root = repository(here)
	}
	root, err = filepath.Abs(root)
	return report.Paths{Root: root, Folder: here}, err
}

// repository is the nearest folder from here up that has .git in it; here, where
// there is none.
func repository(here string) string {
	for folder := here; ; folder = filepath.Dir(folder) {
		if _, err := os.Stat(filepath.Join(folder, ".git")); err == nil {
			return folder
		}
		if filepath.Dir(folder) == folder {
			return here
		}
	}
}

// rulesJudging lists the rules that each plan was judged by, once for each profile
// and configuration.
func rulesJudging(each []assigned, results []*lint.Result) ([]*policy.Rule, error) {
	type judgedBy struct {
		linter  *lint.Linter
		profile string
	}
	var list []*policy.Rule
	var seen []judgedBy
	for i, r := range results {
		if each[i].Linter == nil {
			continue
		}
		by := judgedBy{each[i].Linter, each[i].Profile()}
		if r != nil && r.Profile != "" {
			by.profile = r.Profile
		}
		if slices.Contains(seen, by) {
			continue
		}
		seen = append(seen, by)
		rules, err := by.linter.Rules(by.profile)
		if err != nil && r != nil {
			return nil, err
		}
		list = append(list, rules...)
	}
	return list, nil
}

package report

import (
	"cmp"
	"slices"
	"strings"

	"liftlint/internal/finding"
)

// InputMissing is the check whose findings are listed together: a draft may
// have dozens, and they are worked through as one list.
const InputMissing = "input/missing"

// kind is what the findings of a group have in common, and say only once.
type kind struct {
	severity                    finding.Severity
	rule, grade, title, sources string
	aside                       string // how it is set aside; empty where it counts
}

// Grouped puts findings of one kind and severity together: the worst first, then
// by the place of the first of each, with what is still to be given at the end
// of its severity, and what is set aside at the end of all.
func Grouped(list []finding.Finding) [][]finding.Finding {
	var groups [][]finding.Finding
	at := map[kind]int{}
	for _, f := range list {
		k := kind{f.Severity, f.Rule, f.Grade, f.Title, Sources(f.Citations), aside(f)}
		i, ok := at[k]
		if !ok {
			i = len(groups)
			at[k], groups = i, append(groups, nil)
		}
		groups[i] = append(groups[i], f)
	}
	slices.SortStableFunc(groups, func(a, b []finding.Finding) int {
		return cmp.Or(counts(b[0])-counts(a[0]), b[0].Severity.Rank()-a[0].Severity.Rank(), waits(a[0])-waits(b[0]))
	})
	return groups
}

func aside(f finding.Finding) string {
	if f.Aside == nil {
		return ""
	}
	return f.Word() + " " + f.Aside.Words()
}

func counts(f finding.Finding) int {
	if f.Aside == nil {
		return 1
	}
	return 0
}

func waits(f finding.Finding) int {
	if f.Rule == InputMissing {
		return 1
	}
	return 0
}

// Keys lists the subjects of a group, each once.
func Keys(g []finding.Finding) string {
	var keys []string
	seen := map[string]bool{}
	for _, f := range g {
		if f.Key != "" && !seen[f.Key] {
			keys, seen[f.Key] = append(keys, f.Key), true
		}
	}
	return strings.Join(keys, ", ")
}

// WithoutRules leaves out the names of the checks that wait, which the account
// of all checks has again.
func WithoutRules(message string) string {
	if cut := strings.LastIndex(message, " ("); cut >= 0 && strings.HasSuffix(message, ")") {
		return message[:cut]
	}
	return message
}

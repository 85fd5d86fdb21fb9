package lint_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/register"
)

// manyItems is a register of so many shackles, some overdue, some without a record,
// some set aside, and a bridle whose members stand in another file.
func manyItems(t testing.TB, n int) *lint.Registers {
	folder := t.TempDir()
	first := "liftlint: 1\nregister: {title: First}\nitems:\n  - {number: BR-1, kind: bridle, serial: B1, status: in_service, master: ML-1, groups: [{legs: [WR-1, WR-2]}]}\n"
	second := "liftlint: 1\nregister: {title: Second}\nitems:\n  - {number: ML-1, kind: master_link, status: in_service}\n  - {number: WR-1, kind: wire_rope_sling, status: in_service}\n  - {number: WR-2, kind: wire_rope_sling, status: scrapped}\n"
	for i := range n {
		text := fmt.Sprintf("  - {number: S-%05d, kind: shackle, serial: K%d, status: %s", i, i, []string{"in_service", "in_service", "quarantined"}[i%3])
		if i%4 != 0 {
			text += fmt.Sprintf(", inspections: [{date: 2026-0%d-01, kind: periodic, inspector: Q. Example, outcome: passed, next_due: 2026-1%d-15, found: {wear: %d %%}}]", 1+i%9, i%3, i%14)
		}
		if text += "}\n"; i%2 == 0 {
			first += text
		} else {
			second += text
		}
	}
	third := "liftlint: 1\nregister: {title: Third}\nitems:\n  - {number: OLD-1, kind: hook, status: scrapped}\n"
	for name, text := range map[string]string{"a.gear.yaml": first, "b.gear.yaml": second, "c.gear.yaml": third} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return lint.NewRegisters(folder)
}

// TestGearResultsAreThoseOfCheckGear: what is found is the same as where findings
// are handed over in parts, each in the file of its item, and every rule accounts
// for every item once, whatever the parts.
func TestGearResultsAreThoseOfCheckGear(t *testing.T) {
	on := time.Date(2026, 11, 4, 0, 0, 0, 0, time.UTC)
	registers := manyItems(t, 1500)
	l := linter(t, lint.Options{On: &on}).WithRegisters(registers)
	r, err := registers.Register()
	if err != nil {
		t.Fatal(err)
	}
	var parts []finding.Finding
	count, err := l.CheckGear(context.Background(), r, func(list []finding.Finding) error { parts = append(parts, list...); return nil })
	if err != nil {
		t.Fatal(err)
	}
	results, err := l.GearResults(context.Background(), r)
	if err != nil || len(results) != 3 {
		t.Fatal(len(results), err)
	}
	list, err := l.GearRules(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	rules := map[string]*policy.Rule{}
	for _, rule := range list {
		rules[rule.ID] = rule
	}
	sum := lint.GearCount{NotAsked: results[0].Gear.NotAsked, Findings: map[finding.Severity]int{}}
	var all []finding.Finding
	for i, x := range results {
		if x.State != lint.Judged || x.Title != []string{"First", "Second", "Third"}[i] || x.Day != "2026-11-04" || x.Profile != "us" {
			t.Errorf("%s: %s %s %s", x.File, x.State, x.Title, x.Day)
		}
		sum.Items, sum.Judged, sum.Aside = sum.Items+x.Gear.Items, sum.Judged+x.Gear.Judged, sum.Aside+x.Gear.Aside
		sum.ForPlan += x.Gear.ForPlan
		for s, n := range x.Gear.Findings {
			sum.Findings[s] += n
		}
		for _, f := range x.Findings {
			if f.Place.File != x.File {
				t.Errorf("%s tells of %s", x.File, f.Place.File)
			}
		}
		all = append(all, x.Findings...)
		for _, c := range x.Checked {
			keys := slices.Concat(c.Met, c.Broken)
			for _, u := range c.NotJudged {
				keys = append(keys, u.Key)
			}
			n := len(keys)
			slices.Sort(keys)
			if len(slices.Compact(keys)) != n || (n == 0) != (c.DoesNotApply != "") {
				t.Errorf("%s: %s has %d subjects, %q", x.File, c.Rule, n, c.DoesNotApply)
			}
			rule := rules[c.Rule]
			if rule == nil || c.Worst != rule.Worst("review") || !slices.Equal(c.FormerIDs, rule.FormerIDs) || c.NotAsked != strings.HasPrefix(c.DoesNotApply, "not asked") {
				t.Errorf("%s: the account of %s is %+v", x.File, c.Rule, c)
			}
			if c.Rule == "register/serials_differ" && n != x.Gear.Judged {
				t.Errorf("%s: %d of %d items were judged", x.File, n, x.Gear.Judged)
			}
		}
	}
	if sum.Items != len(r.Items) || sum.Judged+sum.Aside != len(r.Items) {
		t.Errorf("of %d items in the register: %+v", len(r.Items), sum)
	}
	judged := map[string]int{} // by the number of the item
	for _, x := range results {
		for _, c := range x.Checked {
			if c.Rule == "register/serials_differ" {
				for _, key := range slices.Concat(c.Met, c.Broken) {
					judged[strings.TrimPrefix(key, "on_file/")]++
				}
			}
		}
	}
	for _, i := range r.Items {
		want := 0
		if i.Status == register.InService || i.Status == "" {
			want = 1
		}
		if judged[i.Number] != want {
			t.Errorf("%s, %s, was judged %d times", i.Number, i.Status, judged[i.Number])
		}
	}
	if diff := cmp.Diff(count, sum); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff(finding.Sort(parts), finding.Sort(all)); diff != "" || len(all) < 100 {
		t.Errorf("%d findings: %s", len(all), diff)
	}
}

// TestGearNotValid: faults become findings at the lines of their rows, whatever line
// breaks are in the cells above, and a file that can't be opened is not taken for one
// that was looked at.
func TestGearNotValid(t *testing.T) {
	rd, err := register.NewReader()
	if err != nil {
		t.Fatal(err)
	}
	head := "number;kind;location\nA;shackle;\"rack\nbelow\nthe stairs\"\n" // rows 1 and 2, lines 1 to 4
	list := lint.GearNotValid(append(faultsOf(t, rd, "a.csv", head+"B;shackel;x\nC;shackle;x\n"),
		register.Problem{ID: register.Unreadable, Message: "gone", Place: register.Place{File: "b.csv"}}))
	if len(list) != 2 || list[0].State != lint.NotValid || list[1].State != lint.Unread || len(list[0].Findings) != 1 || len(list[0].Checked) != 0 {
		t.Fatalf("%+v", list)
	}
	f := list[0].Findings[0]
	if f.Rule != "register/not_valid" || f.Severity != finding.Error || f.Place.Range.From.Line != 5 || f.Place.Pointer != "cell=3,2" {
		t.Errorf("%+v", f)
	}
	list = lint.GearNotValid(faultsOf(t, rd, "a.csv", head+"B;shackle;x\nB;hook;\"y\nz\"\n"))
	if g := list[0].Findings[0]; g.Place.Range.From.Line != 6 || len(g.Related) != 1 || g.Related[0].Place.Range.From.Line != 5 {
		t.Errorf("%+v", g)
	}
	list = lint.GearNotValid(faultsOf(t, rd, "a.csv", head+"B;shackle\n"))
	if g := list[0].Findings[0]; g.Place.Range.From.Line != 5 || g.Place.Pointer != "cell=3,2" {
		t.Errorf("%+v", g)
	}
	list = lint.GearNotValid(faultsOf(t, rd, "a.csv", "sep=;\n"+head+"B;shackle\n"))
	if g := list[0].Findings[0]; g.Place.Range.From.Line != 6 || g.Place.Pointer != "cell=4,2" {
		t.Errorf("%+v", g)
	}
}

func faultsOf(t *testing.T, rd *register.Reader, name, text string) register.Problems {
	t.Helper()
	_, err := rd.ReadTable(name, []byte(text), nil)
	var ps register.Problems
	if !errors.As(err, &ps) {
		t.Fatalf("%q: %v", text, err)
	}
	return ps
}

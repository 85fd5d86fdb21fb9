package policy

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/finding"
	"liftlint/internal/nearest"
)

// Profile is whose practice a plan is judged by: data, not rules.
type Profile struct {
	Name         string
	Title        string
	Description  string
	RigidSplit   RigidSplit
	SlingParts   SlingParts
	BridleRating BridleRating
	Intervals    []Interval
	Rules        map[string]Setting // by the rule's id

	tree      *datafile.Tree // where it stands; nil for a profile made in Go
	shortened map[ofKind]int // in months, by configurations
}

// RigidSplit is what legs of a rigid load are judged by where statics alone does
// not settle how they share it: elastic, bound, two_legs or three_legs.
type RigidSplit struct {
	Decides string
	// DecidesWhenEven is the same where the legs' own forces are alike; empty
	// where the profile makes no difference.
	DecidesWhenEven string
	Note            string
	Citations       []finding.Citation
}

// SlingParts is how the parts of one sling that is laid double share its load:
// equal or uneven.
type SlingParts struct {
	Share     string
	Note      string
	Citations []finding.Citation
}

// BridleRating is how the rated load of a bridle goes over to its legs: by the
// angle on its tag, or by the band of angles that this lies in.
type BridleRating struct {
	By        string // by_angle or by_band
	Note      string
	Citations []finding.Citation
}

// Interval is the longest time between periodic inspections, in months.
type Interval struct {
	Kinds     []string // kinds of gear
	Service   string   // normal, severe or special
	Months    int
	Note      string
	Citations []finding.Citation
}

// Setting is what a profile changes of one rule.
type Setting struct {
	Params   map[string]any    // float64, string, bool or a list of strings
	Severity *Levels           // of a rule without grades
	Grades   map[string]Levels // of its grades
	Off      string            // why the rule is switched off
}

// IntervalMonths is the time between periodic inspections of a kind of gear in
// a service, in months; false where the profile gives none.
func (p Profile) IntervalMonths(kind, service string) (int, bool) {
	if m, ok := p.shortened[ofKind{kind, service}]; ok {
		return m, true
	}
	for _, i := range p.Intervals {
		if i.Service == service && slices.Contains(i.Kinds, kind) {
			return i.Months, true
		}
	}
	return 0, false
}

// layer is the profile as the first of the layers.
func (p Profile) layer() Layer { return Layer{Name: "profile " + p.Name, Rules: p.Rules, Tree: p.tree} }

// ProfileNames lists the profiles in the file system, by name.
func ProfileNames(files fs.FS) ([]string, error) {
	entries, err := fs.ReadDir(files, ".")
	if err != nil {
		return nil, err
	}
	var names []string
	for _, e := range entries {
		if name, ok := strings.CutSuffix(e.Name(), ".yaml"); ok && !e.IsDir() {
			names = append(names, name)
		}
	}
	return names, nil
}

// LoadProfile reads NAME.yaml. The error is Problems where the file is wrong,
// and lists the profiles where there is no such one.
func LoadProfile(files fs.FS, name string) (Profile, error) {
	names, err := ProfileNames(files)
	if err != nil {
		return Profile{}, fmt.Errorf("profiles: %w", err)
	}
	if !slices.Contains(names, name) {
		// No guess: it would lead from one code of practice to another.
		return Profile{}, fmt.Errorf("there is no profile %q: there is %s", name, strings.Join(names, ", "))
	}
	text, err := fs.ReadFile(files, name+".yaml")
	if err != nil {
		return Profile{}, fmt.Errorf("profile %s: %w", name, err)
	}
	return ReadProfile(path.Join("profiles", name+".yaml"), name, text)
}

// ReadProfile reads the text of a profile; file is its name in problems.
func ReadProfile(file, name string, text []byte) (Profile, error) {
	schema, err := datafile.Compile("profile.schema.json")
	if err != nil {
		return Profile{}, err
	}
	tree, ps := datafile.Read(datafile.Text{File: file, Text: string(text), Line: 1})
	if len(ps) == 0 {
		ps = schema.Check(tree)
	}
	if len(ps) > 0 {
		return Profile{}, ps.Sorted()
	}
	p, ps := buildProfile(tree)
	if len(ps) == 0 && p.Name != name {
		ps.Add(tree.Problem("/name", "the profile's name is %q, and its file is %s", p.Name, file))
	}
	return p, ps.Sorted()
}

// profileFile is a profile as it is written.
type profileFile struct {
	Name        string `json:"name"`
	Title       string `json:"title"`
	Description string `json:"description"`
	RigidSplit  struct {
		Decides         string             `json:"decides"`
		DecidesWhenEven string             `json:"decides_when_even"`
		Note            string             `json:"note"`
		Cite            []finding.Citation `json:"cite"`
	} `json:"rigid_split"`
	SlingParts struct {
		Share string             `json:"share"`
		Note  string             `json:"note"`
		Cite  []finding.Citation `json:"cite"`
	} `json:"sling_parts"`
	BridleRating struct {
		By   string             `json:"by"`
		Note string             `json:"note"`
		Cite []finding.Citation `json:"cite"`
	} `json:"bridle_rating"`
	Intervals []IntervalFile     `json:"inspection_intervals"`
	Rules     map[string]Setting `json:"rules"`
}

func buildProfile(tree *datafile.Tree) (Profile, Problems) {
	var f profileFile
	if err := datafile.Convert(tree.Root, &f); err != nil {
		return Profile{}, Problems{tree.Problem("", "%v", err)}
	}
	p := Profile{Name: f.Name, Title: f.Title, Description: f.Description, Rules: f.Rules, tree: tree}
	p.RigidSplit = RigidSplit{f.RigidSplit.Decides, f.RigidSplit.DecidesWhenEven, f.RigidSplit.Note, f.RigidSplit.Cite}
	p.SlingParts = SlingParts{f.SlingParts.Share, f.SlingParts.Note, f.SlingParts.Cite}
	if p.SlingParts.Share == "" {
		p.SlingParts.Share = "equal"
	}
	p.BridleRating = BridleRating{f.BridleRating.By, f.BridleRating.Note, f.BridleRating.Cite}
	var ps Problems
	known := newShape().words("gear", "kind")
	for i, x := range f.Intervals {
		for k, kind := range x.Kinds {
			at := fmt.Sprintf("/inspection_intervals/%d/kinds/%d", i, k)
			if !slices.Contains(known, kind) {
				ps.Add(tree.Problem(at, "%q is no kind of gear%s", kind, nearest.Hint(kind, known)))
			}
			if _, twice := p.IntervalMonths(kind, x.Service); twice {
				ps.Add(tree.Problem(at, "%s in %s service has an interval already", kind, x.Service))
			}
		}
		p.Intervals = append(p.Intervals, x.Interval())
	}
	return p, ps
}

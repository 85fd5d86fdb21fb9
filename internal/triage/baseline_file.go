package triage

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/record"
)

// BaselineVersion is the number of the format.
const BaselineVersion = 1

// Baseline is what was known of plans on another day: their findings do not count
// as long as they get no worse.
type Baseline struct {
	Version int         `json:"version" doc:"Version of this format: 1."`
	Stage   string      `json:"stage" doc:"The stage that the plans were judged at." enum:"draft,review,prelift"`
	Plans   []KnownPlan `json:"plans" doc:"The plans with findings, by file."`

	File string `json:"-"` // its name, as people know it
}

// KnownPlan is one plan of a baseline.
type KnownPlan struct {
	File     string         `json:"file" doc:"The file, named from the root of the repository on."`
	Profile  string         `json:"profile" doc:"Whose practice it was judged by."`
	Findings []KnownFinding `json:"findings" doc:"What was found, by rule and subject."`

	judged Case // by which it was taken down
}

// KnownFinding is a finding as it was.
type KnownFinding struct {
	Rule        string       `json:"rule" doc:"Id of the rule."`
	Key         string       `json:"key" doc:"The subject: a record's key in the facts, with a leg that has no id called by what it goes to."`
	Severity    string       `json:"severity" doc:"How bad it was." enum:"error,warning,note"`
	Grade       *string      `json:"grade,omitempty" doc:"The grade reached, of rules that have grades."`
	Measured    *KnownFigure `json:"measured,omitempty" doc:"What was measured; absent where the rule measures nothing."`
	Limit       *KnownFigure `json:"limit,omitempty" doc:"The limit then; absent where there was none."`
	Fingerprint string       `json:"fingerprint" doc:"What the finding is known again by: 32 hexadecimal digits made of file, rule and subject, as in the SARIF report."`

	line   int             // where it stands
	taken  finding.Finding // what it was taken down from; none of an entry that was read
	former string          // the id that it gives its rule, where that is one it had before
}

// KnownFigure is a number in the unit that its field names.
type KnownFigure struct {
	Field string  `json:"field" doc:"Its name in the facts or the rule's parameters; the unit is in the name."`
	Value float64 `json:"value" doc:"The number in that unit."`
}

// BaselineSchema is the published JSON Schema of a baseline.
func BaselineSchema() map[string]any {
	return record.Schema(reflect.TypeFor[Baseline](), "liftlint baseline", "What is known of plans already: findings that do not count as long as they get no worse. liftlint baseline writes it.")
}

// Text writes a baseline, an entry a line. The same findings give the same bytes.
func (b *Baseline) Text() ([]byte, error) {
	b.sort()
	var out bytes.Buffer
	fmt.Fprintf(&out, "{\n  \"version\": %d,\n  \"stage\": %s,\n  \"plans\": [", BaselineVersion, quoted(b.Stage))
	for i, p := range b.Plans {
		fmt.Fprintf(&out, "%s\n    {\n      \"file\": %s,\n      \"profile\": %s,\n      \"findings\": [", comma(i), quoted(p.File), quoted(p.Profile))
		for k, f := range p.Findings {
			line, err := json.Marshal(f)
			if err != nil {
				return nil, fmt.Errorf("baseline: %s on %s: %w", f.Rule, f.Key, err)
			}
			fmt.Fprintf(&out, "%s\n        %s", comma(k), line)
		}
		out.WriteString("\n      ]\n    }")
	}
	out.WriteString("\n  ]\n}\n")
	return out.Bytes(), nil
}

func comma(i int) string {
	if i == 0 {
		return ""
	}
	return ","
}

func quoted(text string) []byte {
	b, _ := json.Marshal(text) // a text always has a form
	return b
}

func (b *Baseline) sort() {
	b.Plans = slices.DeleteFunc(b.Plans, func(p KnownPlan) bool { return len(p.Findings) == 0 })
	slices.SortFunc(b.Plans, func(x, y KnownPlan) int { return strings.Compare(x.File, y.File) })
	for _, p := range b.Plans {
		slices.SortFunc(p.Findings, byRule)
	}
}

// ReadBaseline reads the text of a baseline. name is what people know it by.
func ReadBaseline(name string, text []byte) (*Baseline, error) {
	b := &Baseline{File: name}
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	err := d.Decode(b)
	if err == nil {
		if _, end := d.Token(); !errors.Is(end, io.EOF) {
			err = errors.New("something stands behind its end")
		}
	}
	if err == nil {
		err = b.check(text)
	}
	if err != nil {
		return nil, fmt.Errorf("%s is no baseline: %w", name, err)
	}
	return b, nil
}

var isPrint = regexp.MustCompile(`^[0-9a-f]{32}$`)

// check refuses what no baseline holds, and notes where each entry stands.
func (b *Baseline) check(text []byte) error {
	if b.Version != BaselineVersion {
		return fmt.Errorf("it has version %d of the format, and this program reads version %d", b.Version, BaselineVersion)
	}
	files, prints := map[string]bool{}, map[string]bool{}
	for _, p := range b.Plans {
		if p.File == "" || p.Profile == "" || files[p.File] {
			return fmt.Errorf("plan %q has no name or no profile, or stands there twice", p.File)
		}
		files[p.File] = true
		for i := range p.Findings {
			f := &p.Findings[i]
			if _, err := finding.ParseSeverity(f.Severity); err != nil {
				return err
			}
			own := finding.Fingerprint(p.File, f.Rule, f.Key, 0)
			if !isPrint.MatchString(f.Fingerprint) || f.Fingerprint != own || prints[own] {
				return fmt.Errorf("%s of %s on %s has not its own fingerprint, or stands there twice: write the baseline anew", f.Rule, p.File, f.Key)
			}
			prints[own] = true
			f.line = 1 + bytes.Count(text[:max(bytes.Index(text, []byte(own)), 0)], []byte("\n"))
		}
	}
	return nil
}

// plan is what is known of one file; empty where nothing is.
func (b *Baseline) plan(file string) KnownPlan {
	for _, p := range b.Plans {
		if p.File == file {
			return p
		}
	}
	return KnownPlan{File: file}
}

// ErrOther is for a baseline of another profile or stage than plans are judged by.
var ErrOther = errors.New("a baseline holds for one stage and for the profile of each plan: write another one")

// Fits refuses a baseline whose plan was judged by another profile.
func (b *Baseline) Fits(file, profile string) error {
	if p := b.plan(file); p.Profile != "" && p.Profile != profile {
		return fmt.Errorf("%s has %s as judged by profile %s, and it is judged by %s: %w", b.File, file, p.Profile, profile, ErrOther)
	}
	return nil
}

// FitsStage refuses a baseline of another stage.
func (b *Baseline) FitsStage(stage string) error {
	if b.Stage != stage {
		return fmt.Errorf("%s: %w", b.otherStage(stage), ErrOther)
	}
	return nil
}

func (b *Baseline) otherStage(stage string) string {
	return fmt.Sprintf("%s is of stage %s, and plans are judged at stage %s", b.File, b.Stage, stage)
}

// NotHeld says that a baseline is of another stage, so that it sets nothing aside;
// empty where it is not.
func (b *Baseline) NotHeld(stage string) string {
	if b.Stage == stage {
		return ""
	}
	return b.otherStage(stage) + ": it sets nothing aside, and all that is found counts"
}

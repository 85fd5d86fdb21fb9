package policy

import (
	"encoding/json"
	"fmt"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
	"liftlint/internal/finding"
)

// Levels is the severity at each stage.
type Levels struct {
	Draft   finding.Severity `json:"draft"`
	Review  finding.Severity `json:"review"`
	Prelift finding.Severity `json:"prelift"`
}

// Always is the same severity at every stage.
func Always(s finding.Severity) Levels { return Levels{s, s, s} }

// At is the severity at a stage; an error at one that there is not, so that a
// mistake is never read as harmless.
func (l Levels) At(stage string) finding.Severity {
	switch stage {
	case Draft:
		return l.Draft
	case Review:
		return l.Review
	case Prelift:
		return l.Prelift
	}
	return finding.Error
}

// String is one severity, or one for each stage where they differ.
func (l Levels) String() string {
	if l == Always(l.Review) {
		return string(l.Review)
	}
	return fmt.Sprintf("%s at draft, %s at review, %s at prelift", l.Draft, l.Review, l.Prelift)
}

// UnmarshalJSON takes one severity, or one for each stage.
func (l *Levels) UnmarshalJSON(b []byte) error {
	var one finding.Severity
	if json.Unmarshal(b, &one) == nil {
		*l = Always(one)
		return nil
	}
	type plain Levels
	return json.Unmarshal(b, (*plain)(l))
}

// The stages of a plan, in their order.
const (
	Draft   = "draft"
	Review  = "review"
	Prelift = "prelift"
)

// Stages lists the stages in their order.
func Stages() []string { return []string{Draft, Review, Prelift} }

// metadata is a rule's METADATA as it is written.
type metadata struct {
	Title       string `json:"title"`
	Description string `json:"description"`
	Custom      custom `json:"custom"`
}

type custom struct {
	Severity  *Levels               `json:"severity"`
	Over      string                `json:"over"`
	Where     map[string]condition  `json:"where"`
	When      map[string]condition  `json:"when"`
	Stages    []string              `json:"stages"`
	Measured  string                `json:"measured"`
	Limit     string                `json:"limit"`
	Params    map[string]paramEntry `json:"params"`
	Grades    []gradeEntry          `json:"grades"`
	Message   string                `json:"message"`
	Place     string                `json:"place"`
	Remedy    string                `json:"remedy"`
	Cite      []citeEntry           `json:"cite"`
	Lowerable *bool                 `json:"lowerable"`
	Waivable  *bool                 `json:"waivable"`
	NeedsFrom string                `json:"needs_from"`
	FormerIDs []string              `json:"former_ids"`
}

type gradeEntry struct {
	Name     string `json:"name"`
	Title    string `json:"title"`
	Severity Levels `json:"severity"`
	Measured string `json:"measured"`
	Limit    string `json:"limit"`
	Message  string `json:"message"`
}

type citeEntry struct {
	finding.Citation
	Profiles []string `json:"profiles"`
	Grades   []string `json:"grades"`
}

// condition is a list of values or a range of numbers.
type condition struct {
	values  []any
	atLeast *float64
	atMost  *float64
}

func (c *condition) UnmarshalJSON(b []byte) error {
	if json.Unmarshal(b, &c.values) == nil {
		return nil
	}
	var bounds struct {
		AtLeast *float64 `json:"at_least"`
		AtMost  *float64 `json:"at_most"`
	}
	err := json.Unmarshal(b, &bounds)
	c.atLeast, c.atMost = bounds.AtLeast, bounds.AtMost
	return err
}

// paramEntry is a default, or a default with its bounds.
type paramEntry struct {
	Default any      `json:"default"`
	AtLeast *float64 `json:"at_least"`
	AtMost  *float64 `json:"at_most"`
	OneOf   []string `json:"one_of"`
}

func (p *paramEntry) UnmarshalJSON(b []byte) error {
	type plain paramEntry
	if len(b) > 0 && b[0] == '{' {
		return json.Unmarshal(b, (*plain)(p))
	}
	return json.Unmarshal(b, &p.Default)
}

// metadataText takes the YAML out of the comment above the package line.
func metadataText(m *ast.Module) (datafile.Text, error) {
	y := datafile.Text{File: m.Package.Location.File}
	next := 0
	for _, c := range m.Comments {
		line := string(c.Text)
		switch {
		case strings.TrimSpace(line) == "METADATA" && next != 0:
			return y, fmt.Errorf("a rule has one METADATA, above its package line; this is another on line %d", c.Location.Row)
		case strings.TrimSpace(line) == "METADATA":
			next, y.Line = c.Location.Row+1, c.Location.Row+1
		case next != 0 && c.Location.Row == next && c.Location.Row < m.Package.Location.Row:
			stripped := strings.TrimPrefix(line, " ")
			y.Columns = append(y.Columns, c.Location.Col+len(line)-len(stripped))
			y.Text += stripped + "\n"
			next++
		}
	}
	if next == 0 {
		return y, fmt.Errorf("there is no METADATA above the package line: it holds title, description and, under custom, severity, over, message and cite")
	}
	if next != m.Package.Location.Row {
		return y, fmt.Errorf("METADATA on line %d does not stand right above the package line", y.Line-1)
	}
	return y, nil
}

// readMetadata reads and validates a rule's METADATA.
func readMetadata(m *ast.Module, schema *datafile.Schema) (metadata, *datafile.Tree, Problems) {
	var meta metadata
	var ps Problems
	y, err := metadataText(m)
	if err != nil {
		noteAt(&ps, m.Package.Location, "%v", err)
		return meta, nil, ps
	}
	tree, ps := datafile.Read(y)
	if len(ps) > 0 {
		return meta, tree, ps
	}
	if ps = schema.Check(tree); len(ps) > 0 {
		return meta, tree, ps
	}
	if err := datafile.Convert(tree.Root, &meta); err != nil {
		ps.Add(tree.Problem("", "METADATA: %v", err))
	}
	return meta, tree, ps
}

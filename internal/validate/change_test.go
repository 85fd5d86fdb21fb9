package validate

import (
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// block writes a tree in YAML's block style, one key a line.
func block(b *strings.Builder, n *yamldoc.Node, indent string) {
	switch {
	case n.Kind == yamldoc.Mapping && len(n.Entries) > 0:
		for _, e := range n.Entries {
			b.WriteString(indent + e.Key + ":")
			blockBelow(b, e.Value, indent)
		}
	case n.Kind == yamldoc.Sequence && len(n.Items) > 0:
		for _, item := range n.Items {
			b.WriteString(indent + "-")
			blockBelow(b, item, indent)
		}
	}
}

func blockBelow(b *strings.Builder, n *yamldoc.Node, indent string) {
	switch {
	case len(n.Entries)+len(n.Items) > 0:
		b.WriteString("\n")
		block(b, n, indent+"  ")
		return
	case n.Kind == yamldoc.Mapping:
		b.WriteString(" {}")
	case n.Kind == yamldoc.Sequence:
		b.WriteString(" []")
	case n.Kind == yamldoc.String:
		quoted, _ := json.Marshal(n.Text)
		b.WriteString(" " + string(quoted))
	default:
		b.WriteString(" " + n.Text)
	}
	b.WriteString("\n")
}

func copyOf(n *yamldoc.Node) *yamldoc.Node {
	c := *n
	c.Entries, c.Items = slices.Clone(n.Entries), slices.Clone(n.Items)
	for i := range c.Entries {
		c.Entries[i].Value = copyOf(c.Entries[i].Value)
	}
	for i := range c.Items {
		c.Items[i] = copyOf(c.Items[i])
	}
	return &c
}

// mappings lists all mappings of a tree, outer ones first.
func mappings(n *yamldoc.Node) []*yamldoc.Node {
	var all []*yamldoc.Node
	if n.Kind == yamldoc.Mapping {
		all = append(all, n)
	}
	for _, e := range n.Entries {
		all = append(all, mappings(e.Value)...)
	}
	for _, item := range n.Items {
		all = append(all, mappings(item)...)
	}
	return all
}

// changed is a valid plan with one key of one mapping drawn.
type changed struct {
	root, in *yamldoc.Node
	key      int
}

func drawKey(t *rapid.T, root *yamldoc.Node) changed {
	c := changed{root: copyOf(root)}
	c.in = rapid.SampledFrom(slices.DeleteFunc(mappings(c.root), func(n *yamldoc.Node) bool { return len(n.Entries) == 0 })).Draw(t, "in")
	c.key = rapid.IntRange(0, len(c.in.Entries)-1).Draw(t, "key")
	return c
}

func (c changed) entry() *yamldoc.Entry { return &c.in.Entries[c.key] }

// faults validates the changed plan, written out anew.
func (c changed) faults(t *rapid.T, v *Validator) (*yamldoc.Document, []yamldoc.Fault) {
	var b strings.Builder
	block(&b, c.root, "")
	doc, unread := yamldoc.Read("changed", []byte(b.String()))
	if len(unread) > 0 {
		t.Fatalf("%s\n%v", b.String(), unread)
	}
	return doc, v.Plan(doc)
}

func onlyFault(t *rapid.T, faults []yamldoc.Fault, id string, at source.Position) {
	t.Helper()
	if len(faults) != 1 || id != "" && faults[0].ID != id || faults[0].Range.From != at {
		t.Fatalf("want one fault %s at %v, got\n%s", id, at, render(faults))
	}
}

func checkChanges(t *testing.T, change func(t *rapid.T, v *Validator, c changed)) {
	v := mustNew(t)
	for _, path := range []string{fourLegs, "testdata/valid/arrangement.yaml"} {
		root := mustRead(t, mustReadFile(t, path)).Root()
		rapid.Check(t, func(t *rapid.T) { change(t, v, drawKey(t, root)) })
	}
}

func misspell(t *rapid.T, key string) string {
	i := rapid.IntRange(0, len(key)-1).Draw(t, "letter")
	switch rapid.IntRange(0, 3).Draw(t, "how") {
	case 0:
		return key[:i] + key[i:i+1] + key[i:] // a letter twice
	case 1:
		if len(key) > 1 {
			return key[:i] + key[i+1:] // a letter left out
		}
	case 2:
		if i > 0 && key[i] != key[i-1] {
			return key[:i-1] + key[i:i+1] + key[i-1:i] + key[i+1:] // two in the wrong order
		}
	}
	return strings.ToUpper(key)
}

func TestMisspeltKeyGivesOneFault(t *testing.T) {
	checkChanges(t, func(t *rapid.T, v *Validator, c changed) {
		right := c.entry().Key
		wrong := misspell(t, right)
		c.entry().Key = wrong
		doc, faults := c.faults(t, v)
		place, ok := doc.Place(c.in.Pointer + "/" + wrong)
		if !ok {
			t.Fatal("no such key")
		}
		onlyFault(t, faults, UnknownKey, place.Key.From)
		if len(right) > 3 && !strings.Contains(faults[0].Message, "did you mean `"+right+"`?") {
			t.Fatal(faults[0].Message)
		}
	})
}

// requiredKeys are those of the format, written down apart from the schemas.
var requiredKeys = map[string]string{
	"":                            "liftlint lift load gear rigging",
	"/lift":                       "id title",
	"/load/size":                  "length width height",
	"/load/center_of_gravity":     "x y z",
	"/load/attachments/*":         "id kind",
	"/gear/*":                     "id kind",
	"/gear/*/tag":                 "condition",
	"/gear/*/inspection":          "date",
	"/rigging/*":                  "from legs",
	"/rigging/*/legs/*":           "down end",
	"/rigging/*/legs/*/end":       "kind",
	"/load/bodies/*":              "id kind axis start",
	"/load/bodies/*/start":        "x y z",
	"/hooks/*":                    "id",
	"/gear/*/points/*":            "id",
	"/gear/*/center_of_gravity":   "x y z",
	"/gear/*/labels/*":            "label value",
	"/rigging/*/legs/*/end/round": "body station",
	"/phases/*":                   "name pitch",
}

// requiredByKind are those of some kinds alone.
var requiredByKind = map[string]string{
	"to": "at", "runs_to": "at", "choke": "round",
	"spreader_beam": "points", "lifting_beam": "points", "rocker_plate": "points",
}

func requiredOf(n *yamldoc.Node) []string {
	at := index.ReplaceAllString(n.Pointer, "/*")
	keys := strings.Fields(requiredKeys[at])
	if kind := n.Get("kind"); kind != nil {
		keys = append(keys, strings.Fields(requiredByKind[kind.Text])...)
	}
	return keys
}

var (
	index     = regexp.MustCompile(`/[0-9]+`)
	suggested = regexp.MustCompile("; write `([a-z_]+): (.*)`$")
)

func TestDroppedKeyGivesOneFaultIfRequired(t *testing.T) {
	checkChanges(t, func(t *rapid.T, v *Validator, c changed) {
		key := c.entry().Key
		required := slices.Contains(requiredOf(c.in), key)
		c.in.Entries = slices.Delete(c.in.Entries, c.key, c.key+1)
		doc, faults := c.faults(t, v)
		if !required {
			if len(faults) > 0 {
				t.Fatalf("%s may be left out, got\n%s", key, render(faults))
			}
			return
		}
		place, _ := doc.Place(c.in.Pointer)
		at := place.Key.From
		if place.Key.IsZero() {
			at = place.Value.From
		}
		onlyFault(t, faults, MissingKey, at)
		c.obey(t, v, faults[0].Message)
	})
}

// obey writes what the message about a missing key says, after which the plan
// has to be valid again.
func (c changed) obey(t *rapid.T, v *Validator, message string) {
	m := suggested.FindStringSubmatch(message)
	if m == nil {
		if !strings.Contains(message, "` with `") {
			t.Fatal("no example: " + message)
		}
		return
	}
	doc, unread := yamldoc.Read("example", []byte(m[1]+": "+m[2]+"\n"))
	if len(unread) > 0 {
		t.Fatal(m[0], unread)
	}
	c.in.Entries = append(c.in.Entries, doc.Root().Entries...)
	if _, faults := c.faults(t, v); len(faults) > 0 {
		t.Fatalf("%s\n%s", message, render(faults))
	}
}

func TestOtherTypeGivesOneFault(t *testing.T) {
	others := []*yamldoc.Node{
		{Kind: yamldoc.Number, Text: "3"}, {Kind: yamldoc.Bool, Text: "true"}, {Kind: yamldoc.Null, Text: "null"},
		{Kind: yamldoc.Null}, {Kind: yamldoc.Mapping}, {Kind: yamldoc.Sequence}, {Kind: yamldoc.String, Text: "some text"},
	}
	checkChanges(t, func(t *rapid.T, v *Validator, c changed) {
		was := c.entry().Value.Kind
		other := *rapid.SampledFrom(slices.DeleteFunc(slices.Clone(others), func(n *yamldoc.Node) bool { return n.Kind == was })).Draw(t, "other")
		c.entry().Value = &other
		doc, faults := c.faults(t, v)
		place, _ := doc.Place(c.in.Pointer + "/" + c.entry().Key)
		if len(faults) != 1 || faults[0].Range.From.Line != place.Key.From.Line || faults[0].ID != WrongType && faults[0].ID != Unit {
			t.Fatalf("line %d:\n%s", place.Key.From.Line, render(faults))
		}
	})
}

func TestBadUnitGivesOneFault(t *testing.T) {
	withUnit := regexp.MustCompile(`^-?[0-9].* (kg|mm|m|in|kN|t|short_ton|deg|%)$`)
	bad := []string{"3", "3 ton", "3 T", "3 furlongs", "", "kg", "1,5 m", "1e3 kg", "5 kPa", "three m", "3 m 2 cm", "-"}
	checkChanges(t, func(t *rapid.T, v *Validator, c changed) {
		if n := c.entry().Value; n.Kind != yamldoc.String || !withUnit.MatchString(n.Text) {
			t.Skip("no quantity")
		}
		c.entry().Value.Text = rapid.SampledFrom(bad).Draw(t, "bad")
		doc, faults := c.faults(t, v)
		place, _ := doc.Place(c.in.Pointer + "/" + c.entry().Key)
		onlyFault(t, faults, Unit, place.Value.From)
	})
}

package register

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// TestEntry: what an item says of its gear comes out as it went in, with the
// pointers of an entry of a plan.
func TestEntry(t *testing.T) {
	r := mustYAML(t, loft(t))
	doc, _ := yamldoc.ReadWithin(yamldoc.RegisterLimits(), "loft.gear.yaml", []byte(loft(t)))
	for i, written := range doc.Root().Get("items").List() {
		item := &r.Items[i]
		parts, _ := mustReader(t).validator.Parts(written)
		id := yamldoc.Text("item", "/gear/7/id", source.Place{})
		got := item.Entry(id, "/gear/7", source.Place{})
		if diff := cmp.Diff(parts.Gear.Value(), got.Value()); diff != "" {
			t.Errorf("%s: %s", item.Number, diff)
		}
		checkPointers(t, got, "/gear/7")
	}
}

func checkPointers(t *testing.T, n *yamldoc.Node, pointer string) {
	t.Helper()
	if n.Pointer != pointer {
		t.Errorf("%s stands at %s", pointer, n.Pointer)
	}
	for _, e := range n.Entries {
		checkPointers(t, e.Value, pointer+"/"+e.Key)
	}
}

// TestPackedTexts: any text survives, and what is a number stays one.
func TestPackedTexts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, number := rapid.String().Draw(t, "text"), rapid.SampledFrom([]string{"3", "-0.5", "true", "2.0"}).Draw(t, "number")
		n := &yamldoc.Node{Kind: yamldoc.Mapping, Entries: []yamldoc.Entry{
			{Key: "a", Value: yamldoc.Text(text, "", source.Place{})},
			{Key: "b", Value: &yamldoc.Node{Kind: yamldoc.Sequence, Items: []*yamldoc.Node{yamldoc.Plain(number, "", source.Place{})}}},
		}}
		u := unpacker{rest: string(pack(n))}
		if diff := cmp.Diff(n.Value(), u.node("").Value()); diff != "" || u.rest != "" {
			t.Fatal(diff, u.rest)
		}
	})
}

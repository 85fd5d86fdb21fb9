package gear

import (
	"slices"
	"strings"
	"testing"

	"liftlint/internal/quantity"
)

func ptr[T any](v T) *T { return &v }

func TestRating(t *testing.T) {
	load := &quantity.Load{Newtons: 50e3}
	for _, c := range []struct {
		name  string
		item  Item
		rated bool
		field string
	}{
		{"legible tag", &WireRopeSling{Common: Common{Tag: &Tag{Condition: Legible, RatedLoad: load}}}, true, "tag.rated_load"},
		{"no tag", &WireRopeSling{}, false, "tag.rated_load"},
		{"illegible tag", &WireRopeSling{Common: Common{Tag: &Tag{Condition: Illegible, RatedLoad: load}}}, false, "tag.rated_load"},
		{"tag lost", &WireRopeSling{Common: Common{Tag: &Tag{Condition: Missing, RatedLoad: load}}}, false, "tag.rated_load"},
		{"shackle", &Shackle{RatedLoad: load}, true, "rated_load"},
		{"beam", &Beam{RatedLoad: load}, true, "rated_load"},
		{"load cell", &InLine{RatedLoad: load}, true, "rated_load"},
		{"grommet", &Grommet{Common: Common{Tag: &Tag{Condition: Legible, RatedLoad: load}}}, true, "tag.rated_load"},
		{"grommet without a tag", &Grommet{}, false, "tag.rated_load"},
		{"link without a mark", &Link{}, false, "rated_load"},
		{"web sling", &TagRatedSling{Common: Common{Tag: &Tag{Condition: Legible, RatedLoad: load}}}, true, "tag.rated_load"},
		{"web sling, illegible tag", &TagRatedSling{Common: Common{Tag: &Tag{Condition: Illegible, RatedLoad: load}}}, false, "tag.rated_load"},
		{"chain sling without a tag", &TagRatedSling{Common: Common{Kind: ChainSlingKind}, Grade: "100", Size: ptr(quantity.Length(0.01))}, false, "tag.rated_load"},
	} {
		got, field := c.item.Rating()
		if (got != nil) != c.rated || field != c.field {
			t.Errorf("%s: %v in %s", c.name, got, field)
		}
	}
}

func TestBearingAndSection(t *testing.T) {
	short, long := ptr(quantity.Length(0.02)), ptr(quantity.Length(3))
	for _, c := range []struct {
		item         Item
		bearing      *quantity.Length
		field        string
		section      *quantity.Length
		sectionField string
		name         string
	}{
		{&WireRopeSling{Length: long, Rope: Rope{Diameter: short}}, long, "length", short, "diameter", "sling"},
		{&Shackle{InsideLength: short}, short, "inside_length", nil, "", "shackle"},
		{&Link{InsideLength: long, SectionDiameter: short}, long, "inside_length", short, "section_diameter", "link"},
		{&Beam{}, nil, "", nil, "", "beam"},
		{&InLine{Length: short, Longest: long}, short, "length", nil, "", "turnbuckle"},
		{&TagRatedSling{Common: Common{Kind: ChainSlingKind}, Length: long, Size: short}, long, "length", short, "size", "chain sling"},
		{&TagRatedSling{Common: Common{Kind: WebSlingKind}, Length: long, Width: short, Thickness: short}, long, "length", nil, "", "web sling"},
		{&Grommet{Rope: Rope{Diameter: short}}, nil, "circumference", short, "diameter", "grommet"},
	} {
		if got, field := c.item.Bearing(); got != c.bearing || field != c.field {
			t.Errorf("%s: bearing %v in %s", c.name, got, field)
		}
		if got, field := c.item.Section(); got != c.section || field != c.sectionField {
			t.Errorf("%s: section %v in %s", c.name, got, field)
		}
	}
}

// TestGrommetHangsInTwoParts: an endless sling reaches half its circumference.
func TestGrommetHangsInTwoParts(t *testing.T) {
	g := &Grommet{Circumference: ptr(quantity.Length(8))}
	if got, field := g.Bearing(); *got != 4 || field != "circumference" || *g.Circumference != 8 {
		t.Errorf("%v in %s", *got, field)
	}
}

// TestSlings: a bridle is no sling by itself, its legs are.
func TestSlings(t *testing.T) {
	for _, k := range Kinds() {
		want := k == GrommetKind || strings.HasSuffix(string(k), "_sling")
		if got := IsSling(&Shackle{Common: Common{Kind: k}}); got != want {
			t.Errorf("%s a sling: %v", k, got)
		}
	}
	if n := len(slices.Compact(slices.Sorted(slices.Values(Kinds())))); n != len(Kinds()) {
		t.Errorf("%d kinds, %d of them different", len(Kinds()), n)
	}
}

func TestOfOneRope(t *testing.T) {
	for body, want := range map[Body]bool{"": true, SinglePart: true, MultiPart: false, CableLaid: false} {
		if (&WireRopeSling{Body: body}).OfOneRope() != want {
			t.Errorf("%q of one rope: %v", body, !want)
		}
	}
}

package plan

import (
	"strings"
	"testing"
)

func TestFaultsOfLinking(t *testing.T) {
	for _, c := range []struct {
		name  string
		pairs []string
		want  []string
	}{
		{"gear twice", []string{"id: S2, kind", "id: S1, kind", "[S2, K2]", "[K2]"},
			[]string{`11 plan/duplicate_id: "S1" names two entries of gear: give each an id of its own (10 the first one)`,
				`19 plan/wrong_part: a leg needs a sling among its parts`}},
		{"attachment twice", []string{"{id: B", "{id: A", "at: B", "at: A"},
			[]string{`7 plan/duplicate_id: "A" names two entries of attachments: give each an id of its own (6 the first one)`}},
		{"leg twice", []string{"- {down: [S1", "- {id: x, down: [S1", "- {down: [S2", "- {id: x, down: [S2"},
			[]string{`19 plan/duplicate_id: "x" names two entries of legs: give each an id of its own (18 the first one)`}},
		{"a name that is another's number", []string{"- {down: [S2", `- {id: "1", down: [S2`},
			[]string{`19 plan/duplicate_id: "1" is also the number of a leg without an id: give this one another id, or that one an id too (18 the leg of that number)`}},
		{"unknown gear", []string{"[S1, K1]", "[S1, KK1]"},
			[]string{`18 plan/unknown_reference: no item of gear has the id "KK1": did you mean "K1"?`}},
		{"unknown gear, nothing near", []string{"[S1, K1]", "[S1, turnbuckle]"},
			[]string{`18 plan/unknown_reference: no item of gear has the id "turnbuckle": there is ML1, S1, S2, K1, K2`}},
		{"swapped letters", []string{"by: [ML1]", "by: [LM1]"},
			[]string{`16 plan/unknown_reference: no item of gear has the id "LM1": did you mean "ML1"?`}},
		{"unknown attachment", []string{"at: B", "at: north"},
			[]string{`19 plan/unknown_reference: no attachment of the load has the id "north": there is A, B`}},
		{"gear as an end", []string{"at: B", "at: K1"},
			[]string{`19 plan/unknown_reference: "K1" is an item of gear: a leg ends at an attachment of the load or at a point of a beam`}},
		{"an end as gear", []string{"[S1, K1]", "[S1, A]"},
			[]string{`18 plan/unknown_reference: "A" is an attachment of the load: here stands the id of a sling, a shackle, a hook, a load cell, a turnbuckle, an adjuster or a swivel`}},
		{"sling for a link", []string{"by: [ML1]", "by: [S1]", "[S1, K1]", "[S2]", "[S2, K2]", "[S3]", "id: K2, kind: shackle", "id: S3, kind: wire_rope_sling", "inside_length: 80 mm}\nrigging", "length: 2 m}\nrigging"},
			[]string{`16 plan/wrong_part: S1 is a wire rope sling and can't be used here: a shackle, a master link, a bridle or a sheave block is asked for`}},
		{"link in a leg", []string{"by: [ML1]", "by: []", "[S1, K1]", "[ML1, S1, K1]"},
			[]string{`18 plan/wrong_part: ML1 is a master link and can't be used here: a sling, a shackle, a hook, a load cell, a turnbuckle, an adjuster or a swivel is asked for`}},
		{"no sling", []string{"[S1, K1]", "[K1]"},
			[]string{`18 plan/wrong_part: a leg needs a sling among its parts`}},
		{"an item in two legs", []string{"[S2, K2]", "[S2, K1]"},
			[]string{`19 plan/wrong_part: K1 works in another place already: list each item of its own under gear, with its own id (18 its first place)`}},
		{"an item twice in a leg", []string{"[S1, K1]", "[S1, S1]"},
			[]string{`18 plan/wrong_part: S1 works in another place already: list each item of its own under gear, with its own id (18 its first place)`}},
		{"gear and attachments, the attachment first", []string{"id: K2, kind", "id: K1, kind", "[S2, K2]", "[S2]", "{id: B", "{id: A", "at: B", "at: A"},
			[]string{`7 plan/duplicate_id: "A" names two entries of attachments: give each an id of its own (6 the first one)`,
				`13 plan/duplicate_id: "K1" names two entries of gear: give each an id of its own (12 the first one)`}},
		{"several, in the order of the file", []string{"by: [ML1]", "by: [ML2]", "[S1, K1]", "[S3, K1]", "at: B", "at: C", "id: K2, kind", "id: K1, kind", "[S2, K2]", "[S2]"},
			[]string{`13 plan/duplicate_id: "K1" names two entries of gear: give each an id of its own (12 the first one)`,
				`16 plan/unknown_reference: no item of gear has the id "ML2": did you mean "ML1"?`,
				`18 plan/unknown_reference: no item of gear has the id "S3": did you mean "S1"?`,
				`19 plan/unknown_reference: no attachment of the load has the id "C": did you mean "A"?`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			expectFaults(t, changed(t, c.pairs...), c.want)
		})
	}
}

// TestFaultPointsAtTheId: the range is that of the id alone.
func TestFaultPointsAtTheId(t *testing.T) {
	text := changed(t, "[S1, K1]", "[S1, K9]")
	_, faults, doc := readText(t, text)
	r := faults[0].Range
	if got := doc.Line(r.From.Line)[r.From.Column-1 : r.To.Column-1]; got != "K9" {
		t.Errorf("the fault points at %q", got)
	}
}

// TestGearAndAttachmentOfOneName: the lists are apart, and so a name may stand
// in both.
func TestGearAndAttachmentOfOneName(t *testing.T) {
	p := good(t, strings.ReplaceAll(base, "K1", "A"))
	leg := p.Supports[0].Legs[0]
	if leg.Down[1].Item.Base().ID != "A" || leg.End.Attachment.ID != "A" {
		t.Errorf("%+v", leg)
	}
}

func TestLinks(t *testing.T) {
	p := good(t, changed(t, "- {down: [S2", "- {id: right, down: [S2"))
	s := p.Supports[0]
	if s.From != "hook" || s.Pointer != "/rigging/0" || len(s.By) != 1 || s.By[0].Item != p.Gear[0] || s.By[0].Pointer != "/rigging/0/by/0" {
		t.Errorf("%+v", s)
	}
	if s.Legs[0].ID != "hook/1" || s.Legs[1].ID != "hook/right" {
		t.Errorf("legs %s and %s", s.Legs[0].ID, s.Legs[1].ID)
	}
	second := s.Legs[1]
	if second.Down[0].Item != p.Gear[2] || second.Down[1].Item != p.Gear[4] || second.Down[1].Pointer != "/rigging/0/legs/1/down/1" {
		t.Errorf("%+v", second.Down)
	}
	if second.End.Attachment != &p.Load.Attachments[1] || second.End.Pointer != "/rigging/0/legs/1/end/at" {
		t.Errorf("%+v", second.End)
	}
}

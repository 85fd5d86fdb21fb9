package plan

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
)

// bridled is a plan with a bridle of three legs, the last of them parked.
const bridled = `liftlint: 1
lift: {id: SQ-1, title: Set a pump}
load:
  attachments:
    - {id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
    - {id: B, kind: padeye, x: 2 m, y: 0 m, z: 1 m}
gear:
  - {id: B1, kind: bridle, master: ML1, groups: [{link: IL1, legs: [S1, S2]}, {legs: [S3]}]}
  - {id: ML1, kind: master_link, inside_length: 200 mm}
  - {id: IL1, kind: intermediate_link, inside_length: 100 mm}
  - {id: S1, kind: wire_rope_sling, length: 2 m}
  - {id: S2, kind: wire_rope_sling, length: 2 m}
  - {id: S3, kind: wire_rope_sling, length: 2 m}
  - {id: S4, kind: wire_rope_sling, length: 2 m}
  - {id: H1, kind: hook, inside_length: 80 mm}
rigging:
  - from: hook
    by: [B1]
    legs:
      - {down: [S1, H1], end: {kind: to, at: A}}
      - {down: [S2], end: {kind: to, at: B}}
      - {down: [S3], end: {kind: parked}}
`

func TestBridle(t *testing.T) {
	s := good(t, bridled).Supports[0]
	if s.Bridle == nil || s.Bridle.Pointer != "/rigging/0/by/0" || s.Bridle.Bridle.ID != "B1" {
		t.Fatalf("%+v", s.Bridle)
	}
	b := s.Bridle.Bridle
	if b.Master.ID != "ML1" || len(b.Groups) != 2 || b.Groups[0].Link.ID != "IL1" || b.Groups[1].Link != nil {
		t.Errorf("%+v", b)
	}
	if len(s.By) != 1 || s.By[0].Item != gear.Item(b.Master) {
		t.Errorf("the master link does not gather the legs: %+v", s.By)
	}
	if len(s.Legs) != 2 || len(s.Parked) != 1 || s.Parked[0].ID != "hook/3" {
		t.Errorf("legs %+v, parked %+v", s.Legs, s.Parked)
	}
	if len(s.Links) != 1 || s.Links[0].Item != gear.Item(b.Groups[0].Link) || !cmp.Equal(s.Links[0].Legs, []int{0, 1}) || s.Links[0].Pointer != "/gear/0/groups/0/link" {
		t.Errorf("%+v", s.Links)
	}
	if s.Legs[1].Link == nil || s.Legs[1].Link.Item != gear.Item(b.Groups[0].Link) || s.Parked[0].Link != nil {
		t.Errorf("%+v", s.Legs)
	}
}

func TestFaultsOfBridles(t *testing.T) {
	const elsewhere = " (8 its first place)"
	for _, c := range []struct {
		name  string
		pairs []string
		want  []string
	}{
		{"a leg that the rigging does not name", []string{"      - {down: [S3], end: {kind: parked}}\n", ""},
			[]string{"18 plan/wrong_part: bridle B1 has a leg S3 that the rigging does not name: use it, or write `{down: [S3], end: {kind: parked}}` (8 the leg)"}},
		{"an item twice in it", []string{"{legs: [S3]}", "{legs: [S1]}", "      - {down: [S3], end: {kind: parked}}\n", ""},
			[]string{"8 plan/wrong_part: S1 is part of bridle B1 already: each link and leg is part of one bridle, once" + elsewhere}},
		{"a leg of another sling", []string{"[S2], end", "[S4], end"},
			[]string{"18 plan/wrong_part: bridle B1 has a leg S2 that the rigging does not name: use it, or write `{down: [S2], end: {kind: parked}}` (8 the leg)",
				"21 plan/wrong_part: the leg hangs from bridle B1: it begins with one of the slings that are part of it"}},
		{"its master link by itself", []string{"by: [B1]", "by: [ML1]", "[S1, H1]", "[S4]", "      - {down: [S2], end: {kind: to, at: B}}\n      - {down: [S3], end: {kind: parked}}\n", ""},
			[]string{"18 plan/wrong_part: ML1 is part of bridle B1 and can't be used by itself: write B1 in `by` (8 where the bridle names it)"}},
		{"one of its legs under another", []string{"[S1, H1]", "[S1, S2]", "      - {down: [S2], end: {kind: to, at: B}}\n", ""},
			[]string{"20 plan/wrong_part: S2 is part of bridle B1 and can't be used by itself: write B1 in `by` (8 where the bridle names it)"}},
		{"its leg without it", []string{"    by: [B1]\n", "", "      - {down: [S3], end: {kind: parked}}\n", "", "[S1, H1]", "[S4]"},
			[]string{"20 plan/wrong_part: S2 is part of bridle B1 and can't be used by itself: write B1 in `by` (8 where the bridle names it)"}},
		{"something below it", []string{"by: [B1]", "by: [B1, ML2]", "id: S4, kind: wire_rope_sling, length: 2 m", "id: ML2, kind: master_link"},
			[]string{"18 plan/wrong_part: a bridle brings its own legs: it comes last, nothing hangs between it and them"}},
		{"all parked", []string{"[S1, H1], end: {kind: to, at: A}", "[S1], end: {kind: parked}", "end: {kind: to, at: B}", "end: {kind: parked}"},
			[]string{"20 plan/wrong_part: every leg is parked: at least one has to carry the load"}},
		{"a parked leg of no bridle", []string{"by: [B1]", "by: []", "groups: [{link: IL1, legs: [S1, S2]}, {legs: [S3]}]", "groups: [{link: IL1, legs: [S4]}]"},
			[]string{"22 plan/wrong_part: only a leg of a bridle is parked: leave out a leg that is not used"}},
		{"a hook with something below", []string{"[S1, H1]", "[S1, H1, S4]"},
			[]string{"20 plan/wrong_part: H1 is a hook, and goes into an attachment: it is the lowest part of its leg"}},
		{"a member of the wrong kind", []string{"master: ML1", "master: S4"},
			[]string{"8 plan/wrong_part: S4 is a wire rope sling and can't be used here: a master link is asked for"}},
		{"legs of two kinds", []string{"id: S3, kind: wire_rope_sling", "id: S3, kind: chain_sling"},
			[]string{"8 plan/wrong_part: S3 is a chain sling, and bridle B1 has a wire rope sling: all legs of a bridle are of one kind (8 where the bridle names S1)"}},
		{"a leg of webbing", []string{"id: S3, kind: wire_rope_sling", "id: S3, kind: web_sling"},
			[]string{"8 plan/wrong_part: S3 is a web sling and can't be used here: a wire rope sling or a chain sling is asked for",
				"22 plan/wrong_part: the leg hangs from bridle B1: it begins with one of the slings that are part of it"}},
		{"five legs", []string{"{legs: [S3]}", "{legs: [S3, S4, S5]}", "  - {id: H1", "  - {id: S5, kind: wire_rope_sling}\n  - {id: H1", "{down: [S3], end", "{down: [S3, H1], end", "[S1, H1]", "[S1]"},
			[]string{"8 plan/wrong_part: bridle B1 has 5 legs; a bridle has four at most",
				"19 plan/wrong_part: bridle B1 has a leg S4 that the rigging does not name: use it, or write `{down: [S4], end: {kind: parked}}` (8 the leg)",
				"19 plan/wrong_part: bridle B1 has a leg S5 that the rigging does not name: use it, or write `{down: [S5], end: {kind: parked}}` (8 the leg)"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := bridled
			for i := 0; i < len(c.pairs); i += 2 {
				if !strings.Contains(text, c.pairs[i]) {
					t.Fatalf("the plan has no %q", c.pairs[i])
				}
				text = strings.Replace(text, c.pairs[i], c.pairs[i+1], 1)
			}
			expectFaults(t, text, c.want)
		})
	}
}

// TestBridleBelowABeam: a bridle hangs from a point as it does from a hook, and
// takes no other sling.
func TestBridleBelowABeam(t *testing.T) {
	beam := []string{
		"  - {id: H1, kind: hook", "  - {id: RP1, kind: rocker_plate, points: [{id: top}, {id: low}]}\n  - {id: H1, kind: hook",
		"from: hook", "from: RP1.low",
		"kind: parked}}\n", "kind: parked}}\n  - {from: hook, legs: [{down: [S4], end: {kind: to, at: RP1.top}}]}\n",
	}
	s := good(t, changedIn(t, bridled, beam...)).Supports[0]
	if s.Bridle == nil || s.Point == nil || s.Point.ID != "RP1.low" || s.Legs[0].ID != "RP1.low/1" || s.Legs[0].Link == nil {
		t.Errorf("%+v", s)
	}
	expectFaults(t, changedIn(t, changedIn(t, bridled, beam...), "[S4], end: {kind: to, at: RP1.top}", "[S4], end: {kind: basket, at: RP1.top, up_to: RP1.low}"),
		[]string{`24 plan/wrong_part: RP1.low holds a bridle or a sheave block, which takes no other sling: the basket goes up to another support`})
}

// TestBridleOfChain hangs as one of rope does.
func TestBridleOfChain(t *testing.T) {
	s := good(t, strings.ReplaceAll(bridled, "kind: wire_rope_sling", "kind: chain_sling")).Supports[0]
	if legs := s.Bridle.Bridle.Legs(); len(legs) != 3 || legs[0].Sling.Base().Kind != gear.ChainSlingKind || legs[0].Sling != s.Legs[0].Down[0].Item {
		t.Errorf("%+v", legs)
	}
	if s.Legs[0].Link == nil || s.Legs[0].Link.Item.Base().ID != "IL1" || len(s.Links) != 1 {
		t.Errorf("%+v", s.Links)
	}
}

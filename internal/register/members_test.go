package register_test

import (
	"errors"
	"strings"
	"testing"

	"liftlint/internal/register"
)

// memberParts are what bridles here are made of.
const memberParts = `liftlint: 1
register: {title: a}
items:
  - {number: M-1, kind: master_link}
  - {number: M-2, kind: master_link}
  - {number: L-1, kind: intermediate_link}
  - {number: W-1, kind: wire_rope_sling}
  - {number: W-2, kind: wire_rope_sling}
  - {number: W-3, kind: wire_rope_sling}
  - {number: W-4, kind: wire_rope_sling}
  - {number: W-5, kind: wire_rope_sling}
  - {number: C-1, kind: chain_sling}
  - {number: K-1, kind: shackle}
`

// TestMembersOfBridles: a bridle is made of links and legs of the right kinds, each
// of them part of one bridle once.
func TestMembersOfBridles(t *testing.T) {
	for _, c := range []struct{ name, bridles, want string }{
		{"right", "{number: B-1, kind: bridle, master: M-1, groups: [{link: L-1, legs: [W-1, W-2]}, {legs: [W-3, W-4]}]}", ""},
		{"itself", "{number: B-1, kind: bridle, master: B-1, groups: [{legs: [W-1]}]}", "`B-1` is of kind bridle, and bridle `B-1` has to name one of kind master link here"},
		{"each other", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [B-2]}]}\n  - {number: B-2, kind: bridle, master: M-2, groups: [{legs: [B-1]}]}", "`B-2` is of kind bridle, and bridle `B-1` has to name one of kind wire rope sling or chain sling here"},
		{"shackle as leg", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [K-1]}]}", "`K-1` is of kind shackle, and bridle `B-1` has to name one of kind wire rope sling or chain sling here"},
		{"leg as master", "{number: B-1, kind: bridle, master: W-2, groups: [{legs: [W-1]}]}", "`W-2` is of kind wire rope sling, and bridle `B-1` has to name one of kind master link here"},
		{"master as link", "{number: B-1, kind: bridle, master: M-1, groups: [{link: M-2, legs: [W-1]}]}", "`M-2` is of kind master link, and bridle `B-1` has to name one of kind intermediate link here"},
		{"legs of two kinds", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [W-1, C-1]}]}", "leg `C-1` of bridle `B-1` is of kind chain sling, and leg `W-1` of kind wire rope sling"},
		{"twice in one", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [W-1, W-1]}]}", "`W-1` is part of bridle `B-1` already"},
		{"of two", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [W-1]}]}\n  - {number: B-2, kind: bridle, master: M-1, groups: [{legs: [W-2]}]}", "`M-1` is part of bridle `B-1` already"},
		{"three on a link", "{number: B-1, kind: bridle, master: M-1, groups: [{link: L-1, legs: [W-1, W-2, W-3]}]}", "intermediate link `L-1` takes 2 legs; here are 3"},
		{"five legs", "{number: B-1, kind: bridle, master: M-1, groups: [{legs: [W-1, W-2, W-3, W-4]}, {legs: [W-5]}]}", "bridle `B-1` has 5 legs; a bridle has 4 at most"},
	} {
		rd, err := register.NewReader()
		if err != nil {
			t.Fatal(err)
		}
		_, err = rd.ReadYAML("a.gear.yaml", []byte(memberParts+"  - "+c.bridles+"\n"))
		var ps register.Problems
		switch {
		case c.want == "" && err != nil:
			t.Errorf("%s: %v", c.name, err)
		case c.want == "":
		case !errors.As(err, &ps) || ps[0].ID != register.WrongMember || !strings.Contains(ps[0].Message, c.want):
			t.Errorf("%s: %v", c.name, err)
		case ps[0].Place.Range.From.Line < 14:
			t.Errorf("%s: the place is %+v", c.name, ps[0].Place)
		}
	}
}

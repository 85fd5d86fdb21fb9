package plan

import (
	"strings"
	"testing"

	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// FuzzDecode: what the schemas let through is read without a panic or an
// error, and a plan has all its legs linked.
func FuzzDecode(f *testing.F) {
	for _, seed := range []string{base, full, bridled, arranged, manyKinds,
		changedIn(f, manyKinds, "splice_at: 1.5 m", "splice_at: 9 m"),
		changedIn(f, manyKinds, "[W1]", "[C1]"),
		changedIn(f, bridled, "id: S3, kind: wire_rope_sling", "id: S3, kind: chain_sling"),
		strings.ReplaceAll(bridled, "kind: wire_rope_sling", "kind: chain_sling"),
		changedIn(f, manyKinds, "[R1, K1]", "[R1]"),
		changedIn(f, arranged, "at: SB1.tl", "at: SB1.left"),
		changedIn(f, arranged, "from: head", "from: SB1.tr"),
		changedIn(f, arranged, "station: 7 m", "station: 10 m"),
		changedIn(f, arranged, "up_to: SB1.right", "up_to: SB2.right"),
		changed(f, "[S2, K2]", "[S2, K1]"),
		changed(f, "at: B", "at: Z"),
		changed(f, "- {down: [S2", `- {id: "1", down: [S2`),
	} {
		f.Add([]byte(seed))
	}
	v, err := validate.New()
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		doc, faults := yamldoc.Read("plan", text)
		if doc == nil || len(faults) > 0 || len(v.Plan(doc)) > 0 {
			return
		}
		p, linking, err := Decode(doc)
		if err != nil {
			t.Fatal(err)
		}
		if (p == nil) == (len(linking) == 0) {
			t.Fatalf("plan %v, faults %v", p, linking)
		}
		for _, x := range linking {
			if x.Range.IsZero() || x.Message == "" {
				t.Fatalf("a fault without a place: %+v", x)
			}
		}
		if p == nil {
			return
		}
		for _, leg := range p.Legs() {
			if leg.End.Attachment == nil && leg.End.Round == nil || len(leg.Down) == 0 {
				t.Fatalf("leg %s leads nowhere", leg.ID)
			}
		}
	})
}

package finding

import (
	"crypto/sha256"
	"fmt"
	"testing"

	"pgregory.net/rapid"
)

// TestFingerprint computes one from its description, so that stored fingerprints
// stay good.
func TestFingerprint(t *testing.T) {
	sum := sha256.Sum256([]byte("17:plans/a.lift.yaml" + "18:angle/leg_too_flat" + "10:leg/hook/1" + "1:0"))
	if got, want := Fingerprint("plans/a.lift.yaml", "angle/leg_too_flat", "leg/hook/1", 0), fmt.Sprintf("%x", sum[:16]); got != want {
		t.Errorf("%s, not %s", got, want)
	}
}

func TestFingerprintsDiffer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts := rapid.SliceOfN(rapid.StringMatching(`[a:1]{0,3}`), 3, 3)
		a, b := parts.Draw(t, "a"), parts.Draw(t, "b")
		m, n := rapid.IntRange(0, 2).Draw(t, "m"), rapid.IntRange(0, 2).Draw(t, "n")
		same := fmt.Sprintf("%q %d", a, m) == fmt.Sprintf("%q %d", b, n)
		if (Fingerprint(a[0], a[1], a[2], m) == Fingerprint(b[0], b[1], b[2], n)) != same {
			t.Fatalf("%q %d and %q %d", a, m, b, n)
		}
	})
}

func TestIdentity(t *testing.T) {
	f := Finding{Message: "the plan lacks `gear`"}
	if got := f.Identity("leg/hook/1"); got != "leg/hook/1" {
		t.Error(got)
	}
	if f.Identity(WholeFile) == (Finding{Message: "the plan lacks `rigging`"}).Identity(WholeFile) {
		t.Error("two findings about a file are one")
	}
}

package plan

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestLegNames: legs without an id are called by what they go to, and where that is
// not enough by their uppermost part. Turning them round changes no name.
func TestLegNames(t *testing.T) {
	for _, c := range []struct {
		name  string
		pairs []string
		want  map[string]string
	}{
		{"as they are", nil, map[string]string{"hook/1": "hook to A", "hook/2": "hook to B"}},
		{"one has an id", []string{"{down: [S2", "{id: right, down: [S2"}, map[string]string{"hook/1": "hook to A"}},
		{"an id that is a number", []string{"{down: [S2", "{id: '2', down: [S2"}, map[string]string{"hook/1": "hook to A"}},
		{"both to one", []string{"at: B}", "at: A}"}, map[string]string{"hook/1": "hook to A by S1", "hook/2": "hook to A by S2"}},
		{"one of those has an id", []string{"at: B}", "at: A}", "{down: [S2", "{id: right, down: [S2"}, map[string]string{"hook/1": "hook to A by S1"}},
		{"turned round", []string{"[S1, K1]", "[S0, K0]", "[S2, K2]", "[S1, K1]", "[S0, K0]", "[S2, K2]", "at: A}", "at: X}", "at: B}", "at: A}", "at: X}", "at: B}"}, map[string]string{"hook/1": "hook to B", "hook/2": "hook to A"}},
	} {
		if d := cmp.Diff(c.want, good(t, changed(t, c.pairs...)).LegNames()); d != "" {
			t.Errorf("%s: %s", c.name, d)
		}
	}
	if d := cmp.Diff(map[string]string{"hook/1": "hook to A", "hook/2": "hook to B", "hook/3": "hook by S3"}, good(t, bridled).LegNames()); d != "" {
		t.Errorf("with a parked one: %s", d)
	}
}

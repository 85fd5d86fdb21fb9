package cli

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestReadPushes: lines as githooks(5) describes them for pre-push.
func TestReadPushes(t *testing.T) {
	a, b, zero := strings.Repeat("a", 40), strings.Repeat("b", 64), strings.Repeat("0", 40)
	got, err := readPushes("refs/heads/x " + a + " refs/heads/y " + b + "\n(delete) " + zero + " refs/heads/z " + a + "\n\nrefs/heads/n " + b + " refs/heads/n " + zero)
	if d := cmp.Diff([]pushed{{a, b}, {b, zero}}, got, cmp.AllowUnexported(pushed{})); d != "" || err != nil {
		t.Error(d, err)
	}
	if got[0].created() || !got[1].created() {
		t.Error("what is new is not told from what is there")
	}
	if _, err := readPushes("refs/heads/x " + a); err == nil {
		t.Error("half a line is taken")
	}
}

// TestRankOf: outcomes go by the precedence of their exit codes.
func TestRankOf(t *testing.T) {
	order := []error{nil, exit{code: Nothing}, exit{code: Findings}, exit{code: Unchecked}, exit{code: Usage}, errors.New("else")}
	for i, err := range order[1:] {
		if rankOf(err) <= rankOf(order[i]) {
			t.Errorf("%v does not go before %v", err, order[i])
		}
	}
}

// TestProgramInScript: a path with marks of the shell in it stays one word.
func TestProgramInScript(t *testing.T) {
	body := hookScript{name: preCommit, program: "/opt/it's $HOME/liftlint"}.body()
	if !strings.Contains(body, `|| liftlint='/opt/it'\''s $HOME/liftlint'`) {
		t.Error(body)
	}
}

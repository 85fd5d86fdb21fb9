package facts

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestGaps(t *testing.T) {
	mass := Input{At: "#/load", Field: "mass", Label: "the load's mass"}
	length := Input{At: "#/gear/0", Field: "length", Label: "S1's length"}
	over := Reason{Text: "the load turns over", ToldOf: TheLift}
	g := Gaps{}
	g.Add("leg/1", "tension_n", mass, length, mass)
	g.Add("leg/1", "tension_n", length)
	g.Explain("leg/1", "tension_n", over, over)
	g.CopyTo("leg/1", "tension_n", "part/1", "load_n")
	g.CopyTo("leg/1", "tension_n", "part/1", "load_n")
	g.Add("leg/2", "tension_n")
	g.Explain("leg/2", "slack")
	g.CopyTo("leg/2", "tension_n", "part/2", "load_n")
	all := Gap{Inputs: []Input{mass, length}, Reasons: []Reason{over}}
	want := Gaps{{"leg/1", "tension_n"}: all, {"part/1", "load_n"}: all}
	if diff := cmp.Diff(want, g); diff != "" {
		t.Error(diff)
	}
	g.Add("part/1", "load_n", Input{At: "#", Field: "x"})
	if n := len(g[GapKey{"leg/1", "tension_n"}].Inputs); n != 2 {
		t.Errorf("what was added to a copy shows in the original: %d inputs", n)
	}
}

package source

import (
	"encoding/json"
	"testing"

	"pgregory.net/rapid"
)

func TestBefore(t *testing.T) {
	for _, c := range []struct {
		p, q Position
		want bool
	}{
		{Position{1, 9}, Position{2, 1}, true},
		{Position{2, 1}, Position{1, 9}, false},
		{Position{3, 4}, Position{3, 5}, true},
		{Position{3, 5}, Position{3, 4}, false},
		{Position{3, 4}, Position{3, 4}, false},
	} {
		if got := c.p.Before(c.q); got != c.want {
			t.Errorf("%v before %v: %v", c.p, c.q, got)
		}
	}
}

func TestBeforeOrders(t *testing.T) {
	position := rapid.Custom(func(t *rapid.T) Position {
		return Position{rapid.IntRange(1, 4).Draw(t, "line"), rapid.IntRange(1, 4).Draw(t, "column")}
	})
	rapid.Check(t, func(t *rapid.T) {
		p, q, r := position.Draw(t, "p"), position.Draw(t, "q"), position.Draw(t, "r")
		if p.Before(q) && q.Before(p) || p != q && !p.Before(q) && !q.Before(p) {
			t.Fatalf("%v and %v have no order", p, q)
		}
		if p.Before(q) && q.Before(r) && !p.Before(r) {
			t.Fatalf("%v, %v, %v", p, q, r)
		}
	})
}

func TestLocationAsJSON(t *testing.T) {
	l := Location{File: "a.lift.yaml", Range: Range{Position{2, 3}, Position{2, 8}}}
	got, err := json.Marshal(l)
	if err != nil {
		t.Fatal(err)
	}
	const want = `{"file":"a.lift.yaml","range":{"from":{"line":2,"column":3},"to":{"line":2,"column":8}}}`
	if string(got) != want {
		t.Errorf("%s", got)
	}
	if l.Range.IsZero() || !(Range{}).IsZero() {
		t.Error("a known range counts as unknown, or the other way round")
	}
}

package compare

import (
	"liftlint/internal/keyname"
	"liftlint/internal/lint"
)

// names calls the legs of a plan by what they hang from and go to, so that they are
// known again when their numbers change, and rules by the ids that they have now.
type names struct {
	legs  keyname.Legs
	rest  func(key string) string // of legs that are not told apart in both revisions
	rules map[string]string       // ids by those that rules had before
}

// namesOf are those of both revisions, for legs that this tells apart in both.
func namesOf(a, b *lint.Result) (names, names) {
	x, y := ends(a), ends(b)
	old, new := newNames(x, y, a), newNames(y, x, b)
	old.rules = idsNow(b)
	return old, new
}

// idsNow are the ids of rules by those that they had before.
func idsNow(r *lint.Result) map[string]string {
	ids := map[string]string{}
	if r == nil {
		return ids
	}
	for _, c := range r.Checked {
		for _, former := range c.FormerIDs {
			ids[former] = c.Rule
		}
	}
	return ids
}

// rule is the id that a rule has now.
func (n names) rule(id string) string {
	if now, ok := n.rules[id]; ok {
		return now
	}
	return id
}

// ends are the ids of the legs by what they hang from and go to.
func ends(r *lint.Result) map[string][]string {
	list := map[string][]string{}
	if r == nil || r.Facts == nil {
		return list
	}
	for _, l := range r.Facts.Document.Legs {
		end := l.From + " to " + l.To
		list[end] = append(list[end], l.ID)
	}
	return list
}

func newNames(own, other map[string][]string, r *lint.Result) names {
	by := map[string]string{}
	for end, list := range own {
		if len(list) == 1 && len(other[end]) <= 1 {
			by[list[0]] = end
		}
	}
	n := names{legs: keyname.New(by), rest: func(key string) string { return key }}
	if r != nil {
		n.rest = r.Stable
	}
	return n
}

// of gives a key with its leg called so.
func (n names) of(key string) string { return n.rest(n.legs.Of(key)) }

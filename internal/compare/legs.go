package compare

import (
	"regexp"
	"slices"
	"strings"

	"liftlint/internal/lint"
)

// names calls the legs of a plan by what they hang from and go to, so that they are
// known again when their numbers change, and rules by the ids that they have now.
type names struct {
	pattern *regexp.Regexp // an id of a leg as a part of a key; nil where there is none
	by      map[string]string
	rules   map[string]string // ids by those that rules had before
}

// namesOf are those of both revisions, for legs that this tells apart in both.
func namesOf(a, b *lint.Result) (names, names) {
	x, y := ends(a), ends(b)
	old, new := newNames(x, y), newNames(y, x)
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

func newNames(own, other map[string][]string) names {
	n := names{by: map[string]string{}}
	var ids []string
	for end, list := range own {
		if len(list) == 1 && len(other[end]) <= 1 {
			n.by[list[0]] = end
			ids = append(ids, regexp.QuoteMeta(list[0]))
		}
	}
	if len(ids) > 0 {
		slices.SortFunc(ids, func(a, b string) int { return len(b) - len(a) }) // hook/12 before hook/1
		n.pattern = regexp.MustCompile(`(^|[/ ])(` + strings.Join(ids, "|") + `)($|[/. ,])`)
	}
	return n
}

// of gives a key with its leg called so.
func (n names) of(key string) string {
	if n.pattern == nil {
		return key
	}
	for { // one at a time: what ends one may begin the next
		m := n.pattern.FindStringSubmatchIndex(key)
		if m == nil {
			return key
		}
		key = key[:m[4]] + n.by[key[m[4]:m[5]]] + key[m[5]:]
	}
}

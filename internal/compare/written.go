package compare

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// value is a scalar of a plan: as it is written, and what it comes to.
type value struct{ text, means string }

// written are the values of a plan by their paths, in which items of lists go by
// what they are called and not by their places.
type written map[string]value

// read flattens the text of a plan. What can't be read has no values. Of gear that a
// register tells of, what stands there counts as written.
func read(s Side) written {
	w := written{}
	if doc, _ := yamldoc.Read(s.Name, s.Text); doc != nil {
		w.add("", doc.Root())
		w.add("gear", s.Result.GearList())
	}
	return w
}

// separator stands between the parts of a path; ids have none.
const separator = " / "

func (w written) add(path string, n *yamldoc.Node) {
	below := func(key string) string {
		if path == "" {
			return key
		}
		return path + separator + key
	}
	switch {
	case n == nil:
	case n.Kind == yamldoc.Mapping:
		for _, e := range n.Entries {
			w.add(below(e.Key), e.Value)
		}
		if len(n.Entries) == 0 && path != "" {
			w[path] = value{"{}", "{}"}
		}
	case n.Kind != yamldoc.Sequence:
		w[path] = value{n.Text, meaning(n)}
	case scalars(n):
		w.addList(path, n)
	default:
		for key, item := range named(n.Items) {
			w.add(below(key), item)
		}
	}
}

// addList takes a list of texts as one value. Its order counts: it is one from top
// to bottom, mostly.
func (w written) addList(path string, n *yamldoc.Node) {
	var texts, means []string
	for _, item := range n.Items {
		texts, means = append(texts, item.Text), append(means, meaning(item))
	}
	if strings.HasSuffix(path, "faults_seen") || strings.HasSuffix(path, "released") { // no more than sets
		slices.Sort(means)
	}
	w[path] = value{"[" + strings.Join(texts, ", ") + "]", strings.Join(means, "\x00")}
}

func scalars(n *yamldoc.Node) bool {
	return !slices.ContainsFunc(n.Items, func(i *yamldoc.Node) bool { return i.Kind == yamldoc.Mapping || i.Kind == yamldoc.Sequence })
}

// meaning is what a scalar comes to: of a physical value the kind and the number,
// in whatever unit it is written.
func meaning(n *yamldoc.Node) string {
	for _, kind := range quantity.Kinds() {
		if v, err := kind.Parse(n.Text); err == nil {
			return fmt.Sprintf("%s %x", kind.Name(), v)
		}
	}
	return fmt.Sprintf("%T %s", n.Value(), n.Text)
}

// named calls the items of a list by what tells them apart, the first of these that
// does so for all of them; by their places where none does.
func named(items []*yamldoc.Node) map[string]*yamldoc.Node {
	for _, name := range []func(*yamldoc.Node) string{textAt("id"), textAt("name"), textAt("from"), endOf, ruleOn} {
		list := map[string]*yamldoc.Node{}
		for _, item := range items {
			if key := name(item); key != "" {
				list[key] = item
			}
		}
		if len(list) == len(items) {
			return list
		}
	}
	list := map[string]*yamldoc.Node{}
	for i, item := range items {
		list[fmt.Sprint(i+1)] = item
	}
	return list
}

func textAt(key string) func(*yamldoc.Node) string {
	return func(n *yamldoc.Node) string {
		if v := n.Get(key); v != nil {
			return v.Text
		}
		return ""
	}
}

// endOf calls a leg by what it goes to, or by its sling where it goes round a body.
func endOf(n *yamldoc.Node) string {
	end := n.Get("end")
	if at := end.Get("at"); at != nil && at.Text != "" {
		return "to " + at.Text
	}
	if down := n.Get("down").List(); len(down) > 0 {
		return "of " + down[0].Text
	}
	return ""
}

// ruleOn calls a waiver by its rule and what it is for.
func ruleOn(n *yamldoc.Node) string {
	rule, on := n.Get("rule"), n.Get("subject")
	if rule == nil {
		return ""
	}
	if on == nil {
		return rule.Text
	}
	return rule.Text + " on " + on.Text
}

// differing are the values that are not the same, by their paths in order.
func differing(a, b written) []Word {
	paths := maps.Clone(a)
	maps.Copy(paths, b)
	var list []Word
	for _, path := range slices.Sorted(maps.Keys(paths)) {
		x, had := a[path]
		y, has := b[path]
		if had && has && x.means == y.means {
			continue
		}
		word := Word{What: path}
		if had {
			word.Old = &x.text
		}
		if has {
			word.New = &y.text
		}
		list = append(list, word)
	}
	return list
}

// gathered puts the values of an item that came or went as a whole into one.
func gathered(words []Word) []Word {
	whole := map[string]*Word{}
	for _, w := range words {
		if item, ok := cutName(w.What); ok && (w.Old == nil) != (w.New == nil) {
			whole[item] = &Word{What: item}
		}
	}
	var list []Word
	for _, w := range words {
		item := itemOf(w.What, whole)
		if item == "" {
			list = append(list, w)
			continue
		}
		into := whole[item]
		if into.Old == nil && into.New == nil {
			list = append(list, *into) // its place in the order; filled below
		}
		name := strings.TrimPrefix(w.What, item+separator)
		into.Old, into.New = joined(into.Old, name, w.Old), joined(into.New, name, w.New)
	}
	for i, w := range list {
		if filled := whole[w.What]; filled != nil {
			list[i] = *filled
		}
	}
	return list
}

// cutName is the path of the item that a value stands for: what has an id, and a waiver,
// which is known by its rule.
func cutName(path string) (item string, ok bool) {
	if strings.HasPrefix(path, "waivers"+separator) {
		return strings.CutSuffix(path, separator+"rule")
	}
	return strings.CutSuffix(path, separator+"id")
}

// itemOf is the outermost item that a path lies in and that came or went.
func itemOf(path string, whole map[string]*Word) string {
	for i := range path {
		if strings.HasPrefix(path[i:], separator) && whole[path[:i]] != nil {
			return path[:i]
		}
	}
	return ""
}

func joined(list *string, name string, text *string) *string {
	if text == nil {
		return list
	}
	more := name + " " + *text
	if list != nil {
		more = *list + ", " + more
	}
	return &more
}

package validate

import (
	"regexp"
	"strconv"
	"strings"

	"liftlint/internal/yamldoc"
)

// speakable is an id, or a point of a beam, that can stand in a sentence as it
// is.
var speakable = regexp.MustCompile(`^[A-Za-z0-9][A-Za-z0-9_-]{0,39}(\.[A-Za-z0-9][A-Za-z0-9_-]{0,39})?$`)

// name is what a message calls the value at a pointer: "gear S1", "leg 2 of
// hook", "`length` of gear S1".
func (x *explainer) name(pointer string) string {
	n, name, list := x.root, "the "+x.what, ""
	for _, step := range pointerSteps(pointer) {
		at := child(n, step)
		if at == nil {
			return name
		}
		if n.Kind == yamldoc.Sequence {
			name, list = itemName(list, name, step, at), ""
		} else {
			name, list = x.keyName(name, step), step
		}
		n = at
	}
	return name
}

func (x *explainer) keyName(of, key string) string {
	switch {
	case of != "the "+x.what:
		return quote(key) + " of " + of
	case key == "lift" || key == "load" || key == "crane" || key == "register":
		return "the " + key
	}
	return quote(key)
}

// itemName names an item of a list by its id or, without one, its number.
func itemName(list, of, index string, n *yamldoc.Node) string {
	number := index
	if i, err := strconv.Atoi(index); err == nil {
		number = strconv.Itoa(i + 1)
	}
	switch list {
	case "items":
		return labeledByNumber(n.Get("number"), number)
	case "gear":
		return labeled("gear", n.Get("id"), number)
	case "attachments":
		return labeled("attachment", n.Get("id"), number)
	case "bodies":
		return labeled("body", n.Get("id"), number)
	case "hooks":
		return labeled("hook", n.Get("id"), number)
	case "phases":
		return labeled("phase", n.Get("name"), number)
	case "points":
		return labeled("point", n.Get("id"), number) + " of " + strings.TrimPrefix(of, "`points` of ")
	case "rigging":
		return labeled("support", n.Get("from"), number)
	case "legs":
		leg := labeled("leg", n.Get("id"), number)
		return strings.Replace(leg, "leg entry", "leg", 1) + " of " + support(of)
	}
	return "entry " + number + " of " + of
}

func labeled(noun string, id *yamldoc.Node, number string) string {
	if id != nil && id.Kind == yamldoc.String && speakable.MatchString(id.Text) {
		return noun + " " + id.Text
	}
	return noun + " entry " + number
}

// labeledByNumber names an item of a register. Its number may hold more than
// an id, so it stands in quotes.
func labeledByNumber(n *yamldoc.Node, entry string) string {
	switch {
	case n != nil && n.Kind == yamldoc.String && n.Text != "":
		return "item " + quote(n.Text)
	case entry == "0":
		return "the item" // the one of a row, which has no place in a list
	}
	return "item entry " + entry
}

// support takes the name of a support out of the name of its list of legs.
func support(legs string) string {
	of := strings.TrimPrefix(legs, "`legs` of ")
	if bare, ok := strings.CutPrefix(of, "support "); ok && !strings.Contains(bare, " ") {
		return bare
	}
	return of
}

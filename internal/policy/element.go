package policy

import (
	"fmt"
	"strings"

	"liftlint/internal/datafile"
)

// ref is the rule's package as Rego names it.
func (r *Rule) ref() string {
	return "data.liftlint.rules." + strings.ReplaceAll(r.ID, "/", ".")
}

// elements reads what a rule found.
func elements(id string, value any) ([]element, error) {
	list, ok := value.([]any)
	if !ok {
		return nil, fmt.Errorf("rule %s answered with %s, not with a set", id, datafile.KindOf(value))
	}
	out := make([]element, 0, len(list))
	for _, x := range list {
		e, ok := elementOf(x)
		if !ok {
			return nil, fmt.Errorf("rule %s found %v: an element is a record's key, or has key, grade and names", id, x)
		}
		out = append(out, e)
	}
	return out, nil
}

func elementOf(x any) (element, bool) {
	if key, ok := x.(string); ok {
		return element{key: key}, true
	}
	m, ok := x.(map[string]any)
	if !ok {
		return element{}, false
	}
	e := element{}
	for name, v := range m {
		switch name {
		case elementKey:
			e.key, ok = v.(string)
		case elementGrade:
			e.grade, ok = v.(string)
		case elementNames:
			var list []any
			list, ok = v.([]any)
			e.names = datafile.Texts(list)
			ok = ok && len(e.names) == len(list)
		default:
			ok = false
		}
		if !ok {
			return e, false
		}
	}
	return e, e.key != ""
}

package report

import "fmt"

// LeftOut says in words what a run over a change did not check: plans that have not
// changed, plans that are gone, and configurations that are, by which plans that
// stay were judged; and unchanged plans that nothing was held against.
func (r Run) LeftOut() []string {
	var list []string
	for _, p := range r.Gone {
		list = append(list, "gone, and not checked: "+p)
	}
	for _, c := range r.GoneConfigs {
		list = append(list, GoneConfig(c))
	}
	for _, p := range r.NotCompared {
		list = append(list, "not changed and not to be read: whether it has gear or the number of its lift in common with what was checked is not known: "+p)
	}
	if n := len(r.Results) + len(r.Lost); n > 0 && r.Unchanged > 0 {
		list = append(list, fmt.Sprintf("the change concerns %d of %s; what is left out has not changed, nor has what judges it", n, Plural(n+r.Unchanged, "plan")))
	}
	return list
}

// GoneConfig words that a configuration is not there any more.
func GoneConfig(file string) string {
	return "gone: the configuration " + file + ": what it asked for is not asked any more of plans in its folder and below"
}

package compute

import (
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// steels counts the fittings of a leg of which the plan names the steel, and
// tells whether these are of unlike series.
func steels(leg plan.Leg) (named int, mixed bool) {
	first := ""
	for _, u := range hang.PartsOf(leg) {
		steel := steelOf(u.Item)
		if steel == "" {
			continue
		}
		named++
		mixed = mixed || first != "" && steel != first
		first = steel
	}
	return named, mixed
}

func steelOf(item gear.Item) string {
	switch x := item.(type) {
	case *gear.Shackle:
		return x.Steel
	case *gear.Link:
		return x.Steel
	case *gear.Hook:
		return x.Steel
	case *gear.InLine:
		return x.Steel
	}
	return ""
}

// chainHeld is, by the id of a link or hook, the highest grade of the chain that it
// holds together with others: its leg's, or that of all legs below it.
func (w *work) chainHeld() map[string]string {
	held := map[string]string{}
	for _, s := range w.plan.Supports {
		for _, leg := range slices.Concat(s.Legs, s.Parked) {
			holding := slices.Concat(s.By, hang.PartsOf(leg))
			for _, u := range leg.Down {
				for _, h := range holding {
					id := h.Item.Base().ID
					held[id] = higherGrade(held[id], chainGrade(u.Item))
				}
			}
		}
	}
	return held
}

// chainGrades are those of chain, rising.
var chainGrades = []string{"43", "70", "80", "100", "120"}

func higherGrade(a, b string) string {
	if slices.Index(chainGrades, b) > slices.Index(chainGrades, a) {
		return b
	}
	return a
}

// asGoodAs lists the series of links and hooks that belong with chain of a grade:
// those of the same grade and above. Alloy steel without a grade counts as grade 8.
var asGoodAs = map[string][]string{
	"80":  {"alloy", "grade_8", "grade_10", "grade_12"},
	"100": {"grade_10", "grade_12"},
	"120": {"grade_12"},
}

// againstChain holds the series of a link or a hook against the chain that it holds.
func againstChain(g *facts.Gear, item gear.Item, held string) {
	g.ChainHeld, g.SteelAgainstChain = "none", "no_chain"
	switch item.(type) {
	case *gear.Link, *gear.Hook:
	default:
		return
	}
	good, ok := asGoodAs[held]
	if !ok {
		return
	}
	g.ChainHeld = held
	switch steel := steelOf(item); {
	case steel == "":
		g.SteelAgainstChain = notGiven
	case slices.Contains(good, steel):
		g.SteelAgainstChain = "as_good"
	default:
		g.SteelAgainstChain = "weaker"
	}
}

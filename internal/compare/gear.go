package compare

import (
	"slices"
	"strings"
)

// gearOf parts what is written of gear from the rest.
func gearOf(words []Word, a, b written) (gear []Gear, rest []Word) {
	at := map[string]int{}
	for _, w := range words {
		inGear, ok := strings.CutPrefix(w.What, "gear"+separator)
		id, field, deep := strings.Cut(inGear, separator)
		if !ok || !deep {
			rest = append(rest, w)
			continue
		}
		i, ok := at[id]
		if !ok {
			i = len(gear)
			at[id] = i
			gear = append(gear, newGear(id, a, b))
		}
		w.What = field
		if field != "id" {
			gear[i].Fields = append(gear[i].Fields, w)
		}
	}
	slices.SortStableFunc(gear, func(x, y Gear) int { return rankOfGear(x) - rankOfGear(y) })
	return gear, rest
}

func newGear(id string, a, b written) Gear {
	kind := "gear" + separator + id + separator + "kind"
	was, had := a[kind]
	is, has := b[kind]
	g := Gear{ID: id, Kind: is.text, Change: "changed"}
	switch {
	case !had:
		g.Change = "added"
	case !has:
		g.Kind, g.Change = was.text, "gone"
	}
	return g
}

func rankOfGear(g Gear) int { return slices.Index([]string{"added", "gone", "changed"}, g.Change) }

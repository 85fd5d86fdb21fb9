package gear

import "liftlint/internal/quantity"

// Bridle is a number of legs of wire rope or of chain on a master link that are
// tagged and inspected as one. Its links and legs are items of their own, linked once all are read.
type Bridle struct {
	Common
	Master *Link
	Groups []BridleGroup
}

// BridleGroup are the legs that hang from one place.
type BridleGroup struct {
	Pointer     string
	Link        *Link  // nil where they hang from the master link itself
	LinkPointer string // where the bridle names the link
	Legs        []BridleLeg
}

// BridleLeg is one leg and the place where the bridle names it.
type BridleLeg struct {
	Pointer string
	Sling   Item // of wire rope or of chain
}

// Legs lists all legs in their order.
func (b *Bridle) Legs() []BridleLeg {
	var all []BridleLeg
	for _, g := range b.Groups {
		all = append(all, g.Legs...)
	}
	return all
}

// Members lists the master link, the intermediate links and the legs.
func (b *Bridle) Members() []Item {
	members := []Item{b.Master}
	for _, g := range b.Groups {
		if g.Link != nil {
			members = append(members, g.Link)
		}
		for _, l := range g.Legs {
			members = append(members, l.Sling)
		}
	}
	return members
}

// Bearing is of no one length: links and legs have their own.
func (b *Bridle) Bearing() (*quantity.Length, string) { return nil, "" }

// Section is of no one diameter either.
func (b *Bridle) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what its tag shows: nothing where it can't be read.
func (b *Bridle) Rating() (*quantity.Load, string) { return b.tagRating() }

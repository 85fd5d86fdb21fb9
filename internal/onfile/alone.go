package onfile

import (
	"strconv"
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/register"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// Groups puts the items of a register that have to be looked at together into
// one group: a bridle with what it is made of. All other items stand alone. The
// order is that of the register, but for members, which follow their bridle.
func Groups(r *register.Register) [][]*register.Item {
	member := map[string]bool{}
	for i := range r.Items {
		for _, m := range r.Items[i].Members.All() {
			member[m.Number] = true
		}
	}
	var groups [][]*register.Item
	for i := range r.Items {
		item := &r.Items[i]
		if member[item.Number] {
			continue
		}
		group := []*register.Item{item}
		for _, m := range item.Members.All() {
			if part, ok := r.Find(m.Number); ok {
				group = append(group, part)
			}
		}
		groups = append(groups, group)
	}
	return groups
}

// Alone is a plan that has nothing but items of a register, each under its
// number, as they were inspected by a day. The error is a fault of the tool.
func Alone(items []*register.Item, day *time.Time) (*Plan, []gear.Item, map[string]*register.Item, error) {
	p := &Plan{own: map[string]bool{}}
	all := &plan.Plan{}
	byNumber := map[string]gear.Item{}
	for i, item := range items {
		pointer := "/gear/" + strconv.Itoa(i)
		id := yamldoc.Text(item.Number, pointer+"/id", source.Place{})
		g, err := plan.DecodeItem(item.Entry(id, pointer, source.Place{}))
		if err != nil {
			return nil, nil, nil, err
		}
		byNumber[item.Number] = g
		all.Gear = append(all.Gear, g)
		p.Entries = append(p.Entries, Entry{ID: item.Number, Pointer: pointer, Item: item})
	}
	for i, item := range items {
		if b, ok := all.Gear[i].(*gear.Bridle); ok {
			link(b, item.Members, byNumber)
		}
	}
	return p, all.Gear, p.History(all, day), nil
}

// link gives a bridle the members that are there.
func link(b *gear.Bridle, m *register.Members, byNumber map[string]gear.Item) {
	b.Master, _ = byNumber[m.Master].(*gear.Link)
	for _, g := range m.Groups {
		group := gear.BridleGroup{}
		group.Link, _ = byNumber[g.Link].(*gear.Link)
		for _, leg := range g.Legs {
			if sling := byNumber[leg]; sling != nil && gear.IsSling(sling) {
				group.Legs = append(group.Legs, gear.BridleLeg{Sling: sling})
			}
		}
		b.Groups = append(b.Groups, group)
	}
}

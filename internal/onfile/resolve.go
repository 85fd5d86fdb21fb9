package onfile

import (
	"errors"
	"fmt"
	"strconv"

	"liftlint/internal/plan"
	"liftlint/internal/register"
	"liftlint/internal/source"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// Plan is a plan with the gear that it takes from a register.
type Plan struct {
	Doc     *yamldoc.Document // with the register's values in place
	Entries []Entry           // those taken from the register, in the order of the gear
	Unlike  []Unlike          // where plan and register say different things

	own       map[string]bool           // pointers of what the plan says of them besides
	byPointer map[string]int            // of Entries
	led       map[string]register.Place // by what Lead wrote of it
}

// Entry is an item of gear that stands in a register.
type Entry struct {
	ID      string
	Pointer string // of the entry in the plan; of a member of a bridle without one, one that the plan has not
	Use     string // of the value in the plan that names it, or the bridle that it is part of; empty without a plan
	Item    *register.Item
}

// Unlike is a value of the plan that is not that of the register.
type Unlike struct {
	Entry Entry
	Field string // as in tag.rated_load
	Here  *yamldoc.Node
	There string // what the register says
}

// ErrNone says that no register is named to take gear from.
var ErrNone = errors.New("no register is named")

// Resolve takes the gear of kind register from the register that open gives;
// it is not called where a plan has none. Faults are entries that lead nowhere.
// The error is that of opening the register, other than ErrNone.
func Resolve(doc *yamldoc.Document, v *validate.Validator, open func() (*register.Register, error)) (*Plan, []yamldoc.Fault, error) {
	list := doc.Root().Get("gear").List()
	r := &resolver{validator: v, ids: map[string]string{}, taken: map[string]bool{}}
	r.named(list)
	if len(r.wanted) == 0 {
		return &Plan{Doc: doc}, nil, nil
	}
	var err error
	if r.register, err = open(); err != nil && !errors.Is(err, ErrNone) {
		return nil, nil, err
	}
	r.plan.own = map[string]bool{}
	r.gear = append(r.gear, list...)
	for _, w := range r.wanted {
		r.take(w)
	}
	r.members()
	r.plan.Doc = doc.WithRoot(withGear(doc.Root(), r.gear))
	return &r.plan, r.faults, nil
}

// withGear is the tree with another list of gear.
func withGear(root *yamldoc.Node, gear []*yamldoc.Node) *yamldoc.Node {
	with := *root
	with.Entries = append([]yamldoc.Entry(nil), root.Entries...)
	for i, e := range with.Entries {
		if e.Key == "gear" {
			list := *e.Value
			list.Items = gear
			with.Entries[i].Value = &list
		}
	}
	return &with
}

// wanted is an entry of kind register: its place in the list, its id and the
// number that it names.
type wanted struct {
	at   int
	id   *yamldoc.Node
	item *yamldoc.Node
}

type resolver struct {
	validator *validate.Validator
	register  *register.Register
	wanted    []wanted
	ids       map[string]string // of entries, by the numbers of their items
	taken     map[string]bool   // the ids that the plan gives
	gear      []*yamldoc.Node
	plan      Plan
	faults    []yamldoc.Fault
}

// named lists the entries of kind register. Those that are not well formed are
// left to the schemas.
func (r *resolver) named(list []*yamldoc.Node) {
	for i, n := range list {
		id, item := n.Get("id"), n.Get("item")
		if isText(id) {
			r.taken[id.Text] = true
		}
		if kind := n.Get("kind"); !isText(kind) || kind.Text != plan.OnRegister || !isText(id) || !isText(item) {
			continue
		}
		r.wanted = append(r.wanted, wanted{i, id, item})
		if _, twice := r.ids[item.Text]; !twice {
			r.ids[item.Text] = id.Text
		}
	}
}

func isText(n *yamldoc.Node) bool { return n != nil && n.Kind == yamldoc.String && n.Text != "" }

// take puts an item in the place of the entry that names it.
func (r *resolver) take(w wanted) {
	if r.register == nil {
		r.fault(plan.UnknownReference, w.item.Place.Value, fmt.Sprintf("%s is in a register, and none is named: write `registers` in liftlint.yaml, or --register FILE", w.item.Text))
		return
	}
	item, ok := r.find(w.item)
	if !ok {
		return
	}
	here := r.gear[w.at]
	e := Entry{ID: w.id.Text, Pointer: here.Pointer, Use: here.Pointer + "/item", Item: item}
	there := item.Entry(w.id, here.Pointer, w.item.Place)
	there.Place = here.Place
	m := merger{resolver: r, entry: e, kind: string(item.Gear.Base().Kind)}
	r.gear[w.at] = m.entryOf(there, here)
	r.plan.own[e.Use] = true
	r.plan.Entries = append(r.plan.Entries, e)
}

func (r *resolver) find(number *yamldoc.Node) (*register.Item, bool) {
	item, ok := r.register.Find(number.Text)
	if !ok {
		hint := ""
		if near, ok := r.register.Near(number.Text); ok {
			hint = ": did you mean " + near + "?"
		}
		r.fault(plan.UnknownReference, number.Place.Value, fmt.Sprintf("no item of the register has the number %q%s", number.Text, hint))
	}
	return item, ok
}

func (r *resolver) fault(id string, at source.Range, message string) {
	r.faults = append(r.faults, yamldoc.Fault{ID: id, Message: message, Range: at})
}

// members names the members of bridles by the ids that the plan has for them.
// One without an entry of its own gets one, with its number for an id.
func (r *resolver) members() {
	for _, e := range r.plan.Entries { // members are no bridles: what is added needs no second look
		m := e.Item.Members
		if m == nil {
			continue
		}
		i, _ := strconv.Atoi(e.Pointer[len("/gear/"):])
		n := r.gear[i]
		r.member(e, n.Get("master"))
		for _, g := range n.Get("groups").List() {
			r.member(e, g.Get("link"))
			for _, leg := range g.Get("legs").List() {
				r.member(e, leg)
			}
		}
	}
}

// member turns the number of one member into an id.
func (r *resolver) member(bridle Entry, n *yamldoc.Node) {
	if n == nil {
		return
	}
	if id, ok := r.ids[n.Text]; ok {
		n.Text = id
		return
	}
	if r.taken[n.Text] {
		r.fault(plan.DuplicateID, n.Place.Value, fmt.Sprintf("bridle %s is made of item %s, and the plan has other gear with this id: give that another, or say `kind: register` and `item: %s` of it", bridle.ID, n.Text, n.Text))
		return
	}
	item, ok := r.find(n)
	if !ok {
		return
	}
	e := Entry{ID: n.Text, Pointer: "/gear/" + strconv.Itoa(len(r.gear)), Use: bridle.Use, Item: item}
	id := yamldoc.Text(n.Text, e.Pointer+"/id", n.Place)
	r.gear = append(r.gear, item.Entry(id, e.Pointer, n.Place))
	r.plan.Entries = append(r.plan.Entries, e)
	r.ids[n.Text], r.taken[n.Text] = n.Text, true
}

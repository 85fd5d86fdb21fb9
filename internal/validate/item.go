package validate

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// The schemas of registers. What a plan says of a piece of gear has the same
// schemas here as there.
const (
	registerPath = "register/register" + suffix
	itemPath     = "register/item" + suffix
	foundFolder  = "register/found/"
)

// otherHere are keys of gear in a plan that a register has under another name.
func otherHere() map[string]string {
	return map[string]string{"id": "number", "inspection": "inspections"}
}

// standIn is the id that an item's gear is validated with: its number may hold
// more than an id can, and has a schema of its own.
const standIn = "item"

// onRegister is the kind of gear in a plan that a register tells of. No item of
// a register is of it.
const onRegister = "register"

// isItem reports whether a node names a kind that items of registers can be of.
func (v *Validator) isItem(kind *yamldoc.Node) bool {
	return v.known("gear", kind) && kind.Text != onRegister
}

// Parts are an item of a register taken apart.
type Parts struct {
	// Gear is what a plan says of the same piece, with an id that stands in for
	// its number; nil where the kind is not known.
	Gear *yamldoc.Node
	// Record is what only a register says, with the number and the kind.
	Record *yamldoc.Node
}

// Register returns what is wrong with the form of a register as Plan does for a
// plan.
func (v *Validator) Register(doc *yamldoc.Document) []yamldoc.Fault {
	x := &explainer{root: doc.Root(), what: "register", line: doc.Line}
	x.check(v.schemas, registerPath, doc.Root())
	for _, item := range doc.Root().Get("items").List() {
		if item.Kind == yamldoc.Mapping {
			v.item(x, item)
		}
	}
	return registerIDs(x.tidied())
}

// Item returns what is wrong with one item that does not stand in a document
// of its own. All its values are on one line.
func (v *Validator) Item(item *yamldoc.Node) []yamldoc.Fault {
	list := &yamldoc.Node{Kind: yamldoc.Sequence, Pointer: "/items", Items: []*yamldoc.Node{item}}
	root := &yamldoc.Node{Kind: yamldoc.Mapping, Entries: []yamldoc.Entry{{Key: "items", Value: list}}}
	x := &explainer{root: root, what: "register", line: func(int) string { return "" }}
	v.item(x, item)
	return registerIDs(x.tidied())
}

// ValidItem gives the parts of an item if Item finds nothing wrong with it, at
// less cost.
func (v *Validator) ValidItem(item *yamldoc.Node) (Parts, bool) {
	p, unknown := v.Parts(item)
	if p.Gear == nil || len(unknown) > 0 || !v.meets(itemPath, p.Record) {
		return p, false
	}
	kind := p.Gear.Get("kind").Text
	if !v.meets(kindPath("gear", kind), p.Gear) {
		return p, false
	}
	for _, n := range foundIn(p.Record) {
		if !v.meets(foundFolder+kind+suffix, n) {
			return p, false
		}
	}
	return p, true
}

func (v *Validator) meets(path string, n *yamldoc.Node) bool {
	sch, err := v.schemas.get(path)
	return err == nil && run(sch, n.Value()) == nil
}

func (v *Validator) item(x *explainer, item *yamldoc.Node) {
	p, unknown := v.Parts(item)
	x.check(v.schemas, itemPath, p.Record)
	for _, e := range unknown {
		x.add(UnknownKey, e.KeyRange, quote(e.Key)+" is no key of "+x.name(item.Pointer)+v.hintFor(item, e.Key))
	}
	if p.Gear == nil {
		x.unknownKind(item.Get("kind"), v.GearKinds())
		return
	}
	kind := p.Gear.Get("kind").Text
	x.check(v.schemas, kindPath("gear", kind), p.Gear)
	for _, n := range foundIn(p.Record) {
		x.check(v.schemas, foundFolder+kind+suffix, n)
	}
}

// unknownKind is about a kind that has no schema. One that is absent or no text
// is told of by the item's own schema.
func (x *explainer) unknownKind(kind *yamldoc.Node, known []string) {
	if kind == nil || kind.Kind != yamldoc.String || kind.Text == "" {
		return
	}
	near := ";"
	if k, ok := nearKey(kind.Text, known); ok {
		near = ": did you mean " + quote(k) + "?"
	}
	x.say(NotAllowed, kind, "%s is no kind of gear%s %s is allowed", quote(kind.Text), near, list(quoteAll(known), "or"))
}

// hintFor guesses among all keys that the item may have.
func (v *Validator) hintFor(item *yamldoc.Node, key string) string {
	if other := otherHere()[key]; other != "" {
		return ": write " + quote(other)
	}
	known := slices.Sorted(maps.Keys(v.properties(itemPath)))
	if kind := item.Get("kind"); v.isItem(kind) {
		known = v.ItemKeys(kind.Text)
	}
	if near, ok := nearKey(key, known); ok {
		return hint(key, near, nil)
	}
	return ""
}

// Parts takes an item apart and lists the entries that belong to neither part.
// A key that both have, as rated_load, is the gear's.
func (v *Validator) Parts(item *yamldoc.Node) (p Parts, unknown []yamldoc.Entry) {
	ofGear, ofRecord := v.gearKeys(item.Get("kind")), v.properties(itemPath)
	gear := &yamldoc.Node{Kind: yamldoc.Mapping, Style: item.Style, Pointer: item.Pointer, Place: item.Place}
	record := &yamldoc.Node{Kind: yamldoc.Mapping, Style: item.Style, Pointer: item.Pointer, Place: item.Place}
	gear.Entries = append(make([]yamldoc.Entry, 0, len(item.Entries)+1), yamldoc.Entry{Key: "id", Value: yamldoc.Text(standIn, item.Pointer, item.Place)})
	record.Entries = make([]yamldoc.Entry, 0, len(item.Entries))
	for _, e := range item.Entries {
		_, here := otherHere()[e.Key]
		_, isGear := ofGear[e.Key]
		_, isRecord := ofRecord[e.Key]
		switch {
		case e.Key == "kind":
			gear.Entries, record.Entries = append(gear.Entries, e), append(record.Entries, e)
		case isGear && !here:
			gear.Entries = append(gear.Entries, e)
		case isRecord:
			record.Entries = append(record.Entries, e)
		case ofGear != nil || here: // of what is no kind, no key can be told from a misspelt one
			unknown = append(unknown, e)
		}
	}
	if ofGear != nil {
		p.Gear = gear
	}
	p.Record = record
	return p, unknown
}

// gearKeys are the keys of a kind of gear; nil where there is no such kind.
func (v *Validator) gearKeys(kind *yamldoc.Node) map[string]*jsonschema.Schema {
	if !v.isItem(kind) {
		return nil
	}
	return v.properties(kindPath("gear", kind.Text))
}

func (v *Validator) properties(path string) map[string]*jsonschema.Schema {
	sch, err := v.schemas.get(path)
	if err != nil {
		return nil
	}
	return sch.Properties
}

func foundIn(record *yamldoc.Node) []*yamldoc.Node {
	var all []*yamldoc.Node
	for _, i := range record.Get("inspections").List() {
		if n := i.Get("found"); n != nil && n.Kind == yamldoc.Mapping {
			all = append(all, n)
		}
	}
	return all
}

// registerIDs are those of a register's faults: the same as a plan's by their
// second half.
func registerIDs(faults []yamldoc.Fault) []yamldoc.Fault {
	for i := range faults {
		if rest, ok := strings.CutPrefix(faults[i].ID, "plan/"); ok {
			faults[i].ID = "register/" + rest
		}
	}
	return faults
}

// GearKinds lists the kinds that gear can be of, sorted.
func (v *Validator) GearKinds() []string {
	return slices.DeleteFunc(slices.Clone(v.kinds["gear"]), func(k string) bool { return k == onRegister })
}

// Field is what a field of an item takes.
type Field struct {
	Quantity quantity.Kind // zero: no physical value
	Day      bool
	Words    []string // the values allowed
	Type     string   // of JSON Schema: string, boolean, integer, number, object, array
}

// ItemField finds a field of an item of a kind by its steps, with numbers for
// the entries of lists.
func (v *Validator) ItemField(kind string, steps []string) (Field, bool) {
	chain := v.fieldChain(kind, steps)
	return fieldOf(chain), len(chain) > 0
}

// fieldChain is what the schemas say of a field; the first of them is its own.
func (v *Validator) fieldChain(kind string, steps []string) []*jsonschema.Schema {
	chain := v.chainOf(kind, steps[0])
	for i, step := range steps[1:] {
		if _, err := strconv.Atoi(step); (err == nil) != isList(chain) {
			return nil
		}
		if step == "found" && i == 1 && steps[0] == "inspections" {
			sch, err := v.schemas.get(foundFolder + kind + suffix)
			if err != nil {
				return nil
			}
			chain = withRefs(sch)
			continue
		}
		chain = below(chain, step)
	}
	return chain
}

// chainOf is what is said of a key of the item itself.
func (v *Validator) chainOf(kind, key string) []*jsonschema.Schema {
	if _, other := otherHere()[key]; other {
		return nil
	}
	if slices.Contains(v.GearKinds(), kind) && key != "kind" {
		if p, ok := v.properties(kindPath("gear", kind))[key]; ok {
			return withRefs(p)
		}
	}
	if p, ok := v.properties(itemPath)[key]; ok {
		return withRefs(p)
	}
	return nil
}

func isList(chain []*jsonschema.Schema) bool {
	return slices.ContainsFunc(chain, func(s *jsonschema.Schema) bool { return slices.Contains(s.Types, "array") })
}

func fieldOf(chain []*jsonschema.Schema) Field {
	var f Field
	for _, s := range chain {
		if r, ok := s.Extensions["quantity"].(quantityRule); ok {
			f.Quantity = r.kind
		}
		if _, ok := s.Extensions["calendar_day"]; ok {
			f.Day = true
		}
		if len(s.Types) > 0 && f.Type == "" {
			f.Type = s.Types[0]
		}
		for _, w := range append(slices.Clone(s.Enum), s.Constant...) {
			f.Words = append(f.Words, fmt.Sprint(w))
		}
	}
	return f
}

// ItemKeys lists the keys of an item of a kind, sorted.
func (v *Validator) ItemKeys(kind string) []string {
	var keys []string
	for _, from := range []map[string]*jsonschema.Schema{v.properties(kindPath("gear", kind)), v.properties(itemPath)} {
		for k := range from {
			if _, other := otherHere()[k]; !other {
				keys = append(keys, k)
			}
		}
	}
	slices.Sort(keys)
	return slices.Compact(keys)
}

package register

import (
	"fmt"

	"liftlint/internal/source"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// Reader reads registers. It is safe for concurrent use.
type Reader struct {
	validator *validate.Validator
	keep      string
}

// NewReader prepares the schemas. An error is a fault of the program.
func NewReader() (*Reader, error) {
	v, err := validate.New()
	if err != nil {
		return nil, fmt.Errorf("register: %w", err)
	}
	return &Reader{validator: v}, nil
}

// Keeping is a reader that keeps, of the item with a number, all values as they
// are written, for Item.Values.
func (rd *Reader) Keeping(number string) *Reader { return &Reader{rd.validator, number} }

// ReadYAML reads a *.gear.yaml file; name is kept for places and opens nothing.
// The error holds Problems.
func (rd *Reader) ReadYAML(name string, src []byte) (*Register, error) {
	r, err := rd.readYAML(name, src)
	if err != nil {
		return nil, err
	}
	return Join(r)
}

// readYAML leaves numbers and serials to Join.
func (rd *Reader) readYAML(name string, src []byte) (*Register, error) {
	doc, faults := yamldoc.ReadWithin(yamldoc.RegisterLimits(), name, src)
	if len(faults) == 0 {
		faults = rd.validator.Register(doc)
	}
	if len(faults) > 0 {
		return nil, fromFaults(name, faults)
	}
	root := doc.Root()
	head := fields{root.Get("register"), nil}
	r := &Register{Files: []File{{Name: name, Title: head.text("title"), Site: head.text("site")}}}
	from := &origin{name: name}
	for _, n := range root.Get("items").List() {
		parts, _ := rd.validator.Parts(n)
		item, err := decode(parts)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		item.at = at{file: from, pointer: n.Pointer, number: n.Get("number").Place.Value}
		if rd.keep != "" && item.Number == rd.keep {
			item.values = n
		}
		r.Items = append(r.Items, item)
	}
	return r, nil
}

// RangeIn is the range of a value in the text of its YAML file, or of what
// stands around it. It reads the text anew, and is for the few places that a
// report shows.
func RangeIn(src []byte, p Place) source.Range {
	doc, faults := yamldoc.ReadWithin(yamldoc.RegisterLimits(), p.File, src)
	if len(faults) > 0 {
		return source.Range{}
	}
	return doc.Nearest(p.Pointer).Value
}

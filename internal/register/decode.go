package register

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// decode reads an item that has passed its schemas. An error is a fault of the
// tool.
func decode(parts validate.Parts) (Item, error) {
	g, err := plan.DecodeItem(parts.Gear)
	if err != nil {
		return Item{}, err
	}
	f := fields{parts.Record, &err}
	number := f.text("number")
	g.Base().ID = number
	item := Item{
		Number:       number,
		Gear:         g,
		said:         pack(parts.Gear),
		Serial:       f.text("serial"),
		Maker:        f.text("maker"),
		RatedLoad:    f.load("rated_load"),
		Certificate:  decodeCertificate(f.of("certificate")),
		Status:       Status(f.text("status")),
		Since:        f.day("since"),
		Why:          f.text("why"),
		Bought:       f.day("bought"),
		Location:     f.text("location"),
		Overloaded:   decodeOverload(f.of("overloaded")),
		HistoryKnown: f.yes("history_known"),
	}
	if load, field := g.Rating(); item.RatedLoad == nil && field == "rated_load" {
		item.RatedLoad = load
	}
	for _, n := range f.node.Get("inspections").List() {
		item.Inspections = append(item.Inspections, decodeInspection(fields{n, &err}))
	}
	for _, n := range f.node.Get("kept").List() {
		k := fields{n, &err}
		item.Kept = append(item.Kept, Kept{k.text("head"), k.text("value")})
	}
	if g.Base().Kind == gear.BridleKind {
		item.Members = decodeMembers(parts.Gear)
	}
	return item, err
}

func decodeMembers(n *yamldoc.Node) *Members {
	f := fields{n, nil}
	m := &Members{Master: f.text("master")}
	for _, g := range n.Get("groups").List() {
		group := Group{Link: fields{g, nil}.text("link")}
		for _, leg := range g.Get("legs").List() {
			group.Legs = append(group.Legs, leg.Text)
		}
		m.Groups = append(m.Groups, group)
	}
	return m
}

func decodeCertificate(f fields) *Certificate {
	if f.node == nil {
		return nil
	}
	return &Certificate{
		Number:    f.text("number"),
		Date:      f.day("date"),
		By:        f.text("by"),
		RatedLoad: f.load("rated_load"),
		ProofLoad: f.load("proof_load"),
		Serial:    f.text("serial"),
	}
}

func decodeOverload(f fields) *Overload {
	if f.node == nil {
		return nil
	}
	o := &Overload{ClearedBy: f.text("cleared_by"), ClearedOn: f.day("cleared_on")}
	if d := f.day("date"); d != nil {
		o.Date = *d
	}
	return o
}

func decodeInspection(f fields) Inspection {
	i := Inspection{
		Kind:          InspectionKind(f.text("kind")),
		Inspector:     f.text("inspector"),
		Qualification: f.text("qualification"),
		Outcome:       Outcome(f.text("outcome")),
		NextDue:       f.day("next_due"),
		Service:       gear.Service(f.text("service")),
		ProofLoad:     f.load("proof_load"),
		Report:        f.text("report"),
		Found:         decodeFound(f.of("found")),
	}
	if d := f.day("date"); d != nil {
		i.Date = *d
	}
	return i
}

// fields reads the values of one mapping that has passed its schema. The first
// that can't be read is kept as an error.
type fields struct {
	node *yamldoc.Node
	err  *error
}

func (f fields) of(key string) fields { return fields{f.node.Get(key), f.err} }

func (f fields) text(key string) string {
	if n := f.node.Get(key); n != nil {
		return n.Text
	}
	return ""
}

func (f fields) yes(key string) *bool {
	n := f.node.Get(key)
	if n == nil {
		return nil
	}
	v := strings.EqualFold(n.Text, "true")
	return &v
}

func (f fields) load(key string) *quantity.Load     { return read(f, key, quantity.ParseLoad) }
func (f fields) length(key string) *quantity.Length { return read(f, key, quantity.ParseLength) }
func (f fields) ratio(key string) *quantity.Ratio   { return read(f, key, quantity.ParseRatio) }
func (f fields) angle(key string) *quantity.Angle   { return read(f, key, quantity.ParseAngle) }
func (f fields) count(key string) *int              { return read(f, key, parseCount) }

func (f fields) day(key string) *time.Time {
	return read(f, key, func(text string) (time.Time, error) { return time.Parse(time.DateOnly, text) })
}

// parseCount takes 2.0 for 2, as schemas do.
func parseCount(text string) (int, error) {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || v != math.Trunc(v) || math.Abs(v) > math.MaxInt32 {
		return 0, fmt.Errorf("%q is no whole number", text)
	}
	return int(v), nil
}

func read[T any](f fields, key string, parse func(string) (T, error)) *T {
	n := f.node.Get(key)
	if n == nil {
		return nil
	}
	v, err := parse(n.Text)
	if err != nil {
		if *f.err == nil {
			*f.err = fmt.Errorf("register: %s passed its schema and can't be read: %w", key, err)
		}
		return nil
	}
	return &v
}

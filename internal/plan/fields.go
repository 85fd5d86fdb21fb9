package plan

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// fields reads the values of one mapping. The document has passed its schemas,
// so a value that can't be read is a fault of the tool; the first is kept and
// stops the decoding.
type fields struct {
	node *yamldoc.Node
	err  *error
}

func (f fields) of(key string) fields { return fields{f.node.Get(key), f.err} }

func (f fields) exists() bool { return f.node != nil }

func (f fields) pointer() string {
	if f.node == nil {
		return ""
	}
	return f.node.Pointer
}

// pointerOr is the pointer, or another where there is nothing here.
func (f fields) pointerOr(other string) string {
	if f.node == nil {
		return other
	}
	return f.node.Pointer
}

func (f fields) items() []fields {
	if f.node == nil {
		return nil
	}
	list := make([]fields, len(f.node.Items))
	for i, n := range f.node.Items {
		list[i] = fields{n, f.err}
	}
	return list
}

func (f fields) text(key string) string {
	if n := f.node.Get(key); n != nil {
		return n.Text
	}
	return ""
}

// truth takes every spelling that YAML has for true.
func (f fields) truth(key string) bool { return strings.EqualFold(f.text(key), "true") }

// yesOrNo is nil where the plan does not say.
func (f fields) yesOrNo(key string) *bool {
	if f.node.Get(key) == nil {
		return nil
	}
	v := f.truth(key)
	return &v
}

// texts reads a list of texts.
func (f fields) texts(key string) []string {
	var list []string
	for _, i := range f.of(key).items() {
		list = append(list, i.node.Text)
	}
	return list
}

// labels reads a list of names with their values, as label=value.
func (f fields) labels(key string) []string {
	var list []string
	for _, i := range f.of(key).items() {
		list = append(list, i.text("label")+"="+i.text("value"))
	}
	return list
}

func (f fields) temperature(key string) *quantity.Temperature {
	return read(f, key, quantity.ParseTemperature)
}

func (f fields) pressure(key string) *quantity.Pressure { return read(f, key, quantity.ParsePressure) }

func (f fields) count(key string) *int { return read(f, key, parseCount) }

func (f fields) mass(key string) *quantity.Mass { return read(f, key, quantity.ParseMass) }

func (f fields) length(key string) *quantity.Length { return read(f, key, quantity.ParseLength) }

func (f fields) angle(key string) *quantity.Angle { return read(f, key, quantity.ParseAngle) }

func (f fields) ratio(key string) *quantity.Ratio { return read(f, key, quantity.ParseRatio) }

func (f fields) moment(key string) *quantity.Moment { return read(f, key, quantity.ParseMoment) }

func (f fields) load(key string) *quantity.Load { return read(f, key, quantity.ParseLoad) }

func (f fields) number(key string) *float64 {
	return read(f, key, func(text string) (float64, error) { return strconv.ParseFloat(text, 64) })
}

func (f fields) day(key string) *time.Time { return read(f, key, parseDay) }

// parseCount takes 2.0 for 2, as schemas do.
func parseCount(text string) (int, error) {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || v != math.Trunc(v) || math.Abs(v) > math.MaxInt32 {
		return 0, fmt.Errorf("%q is no whole number", text)
	}
	return int(v), nil
}

func parseDay(text string) (time.Time, error) { return time.Parse(time.DateOnly, text) }

func read[T any](f fields, key string, parse func(string) (T, error)) *T {
	n := f.node.Get(key)
	if n == nil {
		return nil
	}
	v, err := parse(n.Text)
	if err != nil {
		if *f.err == nil {
			*f.err = fmt.Errorf("plan: %s passed its schema and can't be read: %w", n.Pointer, err)
		}
		return nil
	}
	return &v
}

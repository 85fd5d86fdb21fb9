package facts

import (
	"fmt"
	"math"
	"reflect"
	"strconv"

	"liftlint/internal/record"
)

// significantDigits is what every figure is rounded to, once: fewer than a
// float64 carries, so that the last bits of another processor's arithmetic
// do not reach the rules; more than any measurement has.
const significantDigits = 9

// Finish rounds every figure and lays out empty lists. It is called once,
// when the document is complete.
func (d *Document) Finish() { finish(reflect.ValueOf(d).Elem()) }

func finish(v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			finish(v.Elem())
		}
	case reflect.Float64:
		v.SetFloat(Round(v.Float()))
	case reflect.Slice:
		if v.IsNil() {
			v.Set(reflect.MakeSlice(v.Type(), 0, 0))
		}
		for i := range v.Len() {
			finish(v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finish(v.Field(i))
		}
	}
}

// Round gives x to the significant digits that facts carry, and no negative
// zero.
func Round(x float64) float64 {
	if x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return x + 0
	}
	r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', significantDigits-1, 64), 64)
	if err != nil {
		return x
	}
	return r
}

// check refuses a document that rules must not see: NaN and infinities stop
// the rules' evaluation, and keys that are not unique mix subjects up.
func (d *Document) check() error {
	seen := map[string]bool{}
	for _, c := range Collections() {
		records, _ := d.Records(c)
		for _, r := range records {
			switch {
			case r.Key == "":
				return fmt.Errorf("facts: a record of %s has no key", c)
			case seen[r.Key]:
				return fmt.Errorf("facts: key %q in %s is not unique", r.Key, c)
			}
			seen[r.Key] = true
			if path, bad := notFinite(r.value, ""); bad {
				return fmt.Errorf("facts: %s of %s is not a finite number", path, r.Key)
			}
		}
	}
	return nil
}

func notFinite(v reflect.Value, path string) (string, bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			return notFinite(v.Elem(), path)
		}
	case reflect.Float64:
		return path, math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0)
	case reflect.Slice:
		for i := range v.Len() {
			if p, bad := notFinite(v.Index(i), path); bad {
				return p, true
			}
		}
	case reflect.Struct:
		for _, f := range record.Fields(v.Type()) {
			if p, bad := notFinite(v.FieldByIndex(f.Index), join(path, f.Name)); bad {
				return p, true
			}
		}
	}
	return "", false
}

func join(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}

package facts

import (
	"fmt"
	"math"
	"reflect"

	"pgregory.net/rapid"

	"liftlint/internal/record"
)

// number is any finite figure, great and small ones too.
func number() *rapid.Generator[float64] {
	return rapid.Custom(func(t *rapid.T) float64 {
		x := rapid.Float64Range(-10, 10).Draw(t, "digits")
		return x * math.Pow(10, float64(rapid.IntRange(-12, 25).Draw(t, "power")))
	})
}

// document makes facts of every shape: lists of all lengths, each optional
// field there or not.
func document() *rapid.Generator[*Document] {
	return rapid.Custom(func(t *rapid.T) *Document {
		d := &Document{}
		keys := 0
		fill(t, reflect.ValueOf(d).Elem(), nil, &keys)
		return d
	})
}

func fill(t *rapid.T, v reflect.Value, enum []string, keys *int) {
	switch v.Kind() {
	case reflect.Pointer:
		if rapid.Bool().Draw(t, "there") {
			v.Set(reflect.New(v.Type().Elem()))
			fill(t, v.Elem(), enum, keys)
		}
	case reflect.Slice:
		n := rapid.IntRange(0, 3).Draw(t, "length")
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		for i := range n {
			fill(t, v.Index(i), enum, keys)
		}
	case reflect.Struct:
		for _, f := range record.Fields(v.Type()) {
			fill(t, v.FieldByIndex(f.Index), f.Enum, keys)
		}
		if k := v.FieldByName("Key"); k.IsValid() {
			*keys++
			k.SetString(fmt.Sprint("key/", *keys))
		}
	case reflect.String:
		if enum != nil {
			v.SetString(rapid.SampledFrom(enum).Draw(t, "word"))
			return
		}
		v.SetString(rapid.StringOfN(rapid.RuneFrom([]rune("ab<>&\"\\é\u2028 \n")), 0, 5, -1).Draw(t, "text"))
	case reflect.Bool:
		v.SetBool(rapid.Bool().Draw(t, "truth"))
	case reflect.Int:
		v.SetInt(int64(rapid.IntRange(0, 2000).Draw(t, "count")))
	case reflect.Float64:
		v.SetFloat(number().Draw(t, "figure"))
	default:
		t.Fatalf("a field of kind %v", v.Kind())
	}
}

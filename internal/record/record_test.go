package record

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v5"
)

type base struct {
	Key string `json:"key" doc:"The key."`
}

type inner struct {
	On   bool    `json:"on"`
	Next *inner  `json:"next,omitempty"` // a type that holds itself
	Size float64 `json:"size"`
}

type outer struct {
	base
	Kind   string   `json:"kind" enum:"a,b" doc:"One of two."`
	Many   []string `json:"many" enum:"x,y"`
	Count  *int     `json:"count,omitempty"`
	Inner  *inner   `json:"inner,omitempty" doc:"Another."`
	List   []inner  `json:"list"`
	Hidden string   `json:"-"`
	secret string
	Plain  string
}

func TestFields(t *testing.T) {
	got := Fields(reflect.TypeFor[outer]())
	var names []string
	for _, f := range got {
		name := f.Name
		if f.Optional {
			name += "?"
		}
		names = append(names, name)
	}
	if diff := cmp.Diff("key kind many count? inner? list Plain", strings.Join(names, " ")); diff != "" {
		t.Error(diff)
	}
	if got[1].Doc != "One of two." || !cmp.Equal(got[1].Enum, []string{"a", "b"}) || got[0].Enum != nil {
		t.Errorf("%+v", got[:2])
	}
	v := reflect.ValueOf(outer{base: base{"k"}, Plain: "p", secret: "s"})
	if k := v.FieldByIndex(got[0].Index).String(); k != "k" {
		t.Errorf("the key reads %q", k)
	}
	if again := Fields(reflect.TypeFor[outer]()); len(again) != len(got) {
		t.Error("a second reading differs")
	}
}

// compiled checks values with a JSON Schema implementation of its own.
func compiled(t *testing.T, schema map[string]any) *jsonschema.Schema {
	t.Helper()
	text, err := SchemaFile(schema)
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	if err := c.AddResource("test.json", strings.NewReader(string(text))); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("test.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSchemaJudgesAsTheTypeDoes(t *testing.T) {
	schema := compiled(t, Schema(reflect.TypeFor[outer](), "Outer", "For a test."))
	const good = `{"key":"k","kind":"a","many":["x"],"list":[{"on":true,"size":1}],"Plain":""}`
	for _, c := range []struct {
		name, from, to string
		ok             bool
	}{
		{"as it is", "", "", true},
		{"an optional number", `"kind"`, `"count":3,"kind"`, true},
		{"one inside another", `"kind"`, `"inner":{"on":false,"size":2,"next":{"on":true,"size":0}},"kind"`, true},
		{"half a count", `"kind"`, `"count":3.5,"kind"`, false},
		{"null for absent", `"kind"`, `"count":null,"kind"`, false},
		{"outside the enum", `"a"`, `"c"`, false},
		{"outside the enum of a list", `"x"`, `"z"`, false},
		{"unknown key", `"kind"`, `"other":1,"kind"`, false},
		{"unknown key inside", `"on"`, `"other":1,"on"`, false},
		{"key missing", `"key":"k",`, ``, false},
		{"text for a number", `"size":1`, `"size":"1"`, false},
	} {
		text := strings.Replace(good, c.from, c.to, 1)
		var v any
		if err := json.Unmarshal([]byte(text), &v); err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(v); (err == nil) != c.ok {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}

func TestEveryFieldIsDescribed(t *testing.T) {
	s := Schema(reflect.TypeFor[outer](), "Outer", "For a test.")
	if s["title"] != "Outer" || s["description"] != "For a test." {
		t.Errorf("%v", s)
	}
	p := s["properties"].(map[string]any)
	if got := p["inner"].(map[string]any)["description"]; got != "Another." {
		t.Errorf("%v", got)
	}
}

func TestSchemaRefusesWhatItCannotDescribe(t *testing.T) {
	type point struct {
		At map[string]int `json:"at"`
	}
	type other struct {
		Size uint8 `json:"size"`
	}
	first := reflect.TypeFor[struct {
		A inner `json:"a"`
		B struct {
			C Inner `json:"c"`
		} `json:"b"`
	}]()
	for _, typ := range []reflect.Type{reflect.TypeFor[point](), reflect.TypeFor[other](), first} {
		t.Run(typ.String(), func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("a schema was made")
				}
			}()
			Schema(typ, "", "")
		})
	}
}

// Inner would go by the same name as inner among the definitions.
type Inner struct {
	Off bool `json:"off"`
}

func TestSchemaFileIsStable(t *testing.T) {
	first, err := SchemaFile(Schema(reflect.TypeFor[outer](), "a", "b"))
	if err != nil {
		t.Fatal(err)
	}
	for range 10 {
		again, err := SchemaFile(Schema(reflect.TypeFor[outer](), "a", "b"))
		if err != nil || string(again) != string(first) {
			t.Fatal("the same type gives other bytes")
		}
	}
}

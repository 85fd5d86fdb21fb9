package bundle

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"
)

// walk visits every mapping of decoded JSON.
func walk(at string, v any, visit func(at string, s object)) {
	switch v := v.(type) {
	case object:
		visit(at, v)
		for k, below := range v {
			walk(at+"/"+k, below, visit)
		}
	case []any:
		for _, below := range v {
			walk(at, below, visit)
		}
	}
}

func decoded(t *testing.T) object {
	t.Helper()
	var v object
	if err := json.Unmarshal(mustBundle(t), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// What an editor shows over a key and while one chooses a value.
func TestHoverAndCompletion(t *testing.T) {
	enums, properties := 0, 0
	walk("", decoded(t), func(at string, s object) {
		if values, ok := s["enum"].([]any); ok {
			enums++
			meanings, _ := s["enumDescriptions"].([]any)
			if len(meanings) != len(values) || slices.Contains(meanings, any("")) {
				t.Errorf("%s: %v mean %q", at, values, meanings)
			}
		}
		if _, typed := s["type"].(string); typed && strings.Contains(at, "/properties/") {
			properties++
			if s["title"] == nil && s["description"] == nil && !strings.HasSuffix(at, "/items") {
				t.Errorf("%s says nothing", at)
			}
		}
	})
	if enums < 10 || properties < 50 {
		t.Errorf("%d enums and %d properties seen", enums, properties)
	}
}

// Hover over a quantity names its units, whatever else its key says.
func TestQuantitiesNameTheirUnits(t *testing.T) {
	seen := 0
	walk("", decoded(t), func(at string, s object) {
		message, _ := s["patternErrorMessage"].(string)
		_, units, ok := strings.Cut(message, "unit (")
		if !ok {
			return
		}
		seen++
		unit, _, _ := strings.Cut(units, ",")
		unit, _, _ = strings.Cut(unit, ")")
		names := map[string]string{"deg": "degrees", "%": "percent"}
		if name, spelled := names[unit]; spelled {
			unit = name
		}
		if d, _ := s["description"].(string); !strings.Contains(d, unit) {
			t.Errorf("%s: %q does not name %s", at, d, unit)
		}
	})
	if seen < 15 {
		t.Errorf("%d quantities seen", seen)
	}
}

// draft-07 passes over whatever stands beside a reference, and editors know no
// keywords of ours.
func TestIsDraft07(t *testing.T) {
	walk("", decoded(t), func(at string, s object) {
		if ref, ok := s["$ref"].(string); ok && (len(s) != 1 || !strings.HasPrefix(ref, "#/definitions/")) {
			t.Errorf("%s: %v", at, s)
		}
		for _, ours := range []string{"quantity", "sign", "calendar_day", "$defs"} {
			if _, ok := s[ours]; ok && !strings.HasSuffix(at, "properties") {
				t.Errorf("%s has %s", at, ours)
			}
		}
	})
}

package facts

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestField(t *testing.T) {
	days, slack := -3.0, false
	gear := ViewOf(Gear{Record: Record{Key: "gear/S1", At: "#/gear/0"}, Uses: 2, Kind: "shackle",
		Tag: Tag{State: "legible", Shows: []string{"maker"}}, Inspection: &Inspection{OverdueDays: &days}})
	leg := ViewOf(Leg{Slack: &slack})
	if gear.Key != "gear/S1" || gear.At != "#/gear/0" {
		t.Errorf("%s at %s", gear.Key, gear.At)
	}
	for _, c := range []struct {
		view View
		path string
		want any
	}{
		{gear, "key", "gear/S1"},
		{gear, "uses", 2},
		{gear, "kind", "shackle"},
		{gear, "tag.shows", []string{"maker"}},
		{gear, "tag", Tag{State: "legible", Shows: []string{"maker"}}},
		{gear, "inspection.overdue_days", -3.0},
		{leg, "slack", false},
	} {
		if got, ok := c.view.Field(c.path); !ok || !cmp.Equal(got, c.want) {
			t.Errorf("%s: %#v, %v", c.path, got, ok)
		}
	}
	for view, paths := range map[*View]string{
		&gear: "diameter_m inspection.due Kind kinds tag.other kind.a uses.x inspection.overdue_days.x . tag. .tag",
		&leg:  "slack.x tension_n inspection inspection.due",
	} {
		for path := range strings.FieldsSeq(paths) {
			if got, ok := view.Field(path); ok {
				t.Errorf("%s: %v", path, got)
			}
		}
	}
	if got, ok := gear.Field(""); ok {
		t.Errorf("no name: %v", got)
	}
}

func TestRecords(t *testing.T) {
	d := Document{Legs: []Leg{{Record: Record{Key: "a"}}, {Record: Record{Key: "b"}}}}
	got, ok := d.Records("legs")
	if !ok || len(got) != 2 || got[1].Key != "b" {
		t.Errorf("%v", got)
	}
	if got, ok := d.Records("fits"); !ok || len(got) != 0 {
		t.Errorf("%v", got)
	}
	if _, ok := d.Records("leg"); ok {
		t.Error("there is a collection leg")
	}
	if diff := cmp.Diff("lifts loads hooks attachments gear on_file signs doubtful_records ropes grommets bridles legs parts factors fits bearings gathers hook_uses beams hitches positions", strings.Join(Collections(), " ")); diff != "" {
		t.Error(diff)
	}
}

// TestFieldReadsWhatIsPrinted: for each record, a field is there if and only
// if its JSON has it, with the same value.
func TestFieldReadsWhatIsPrinted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := document().Draw(t, "facts")
		text, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var printed map[string][]map[string]any
		if err := json.Unmarshal(text, &printed); err != nil {
			t.Fatal(err)
		}
		for _, c := range Collections() {
			views, _ := d.Records(c)
			for i, v := range views {
				for name, want := range printed[c][i] {
					got, ok := v.Field(name)
					a, err := json.Marshal(got)
					if err != nil {
						t.Fatal(err)
					}
					b, err := json.Marshal(want)
					if err != nil {
						t.Fatal(err)
					}
					var x, y any
					_, _ = json.Unmarshal(a, &x), json.Unmarshal(b, &y)
					if !ok || !cmp.Equal(x, y) {
						t.Fatalf("%s of %s %d: %s, not %s", name, c, i, a, b)
					}
				}
				for _, name := range []string{"slack", "tension_n", "inspection", "hangs", "eye_length_m", "pull_n"} {
					if _, ok := v.Field(name); ok {
						if _, there := printed[c][i][name]; !there {
							t.Fatalf("%s of %s %d is read and not printed", name, c, i)
						}
					}
				}
			}
		}
	})
}

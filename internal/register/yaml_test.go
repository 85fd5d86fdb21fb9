package register

import (
	"errors"
	"os"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

const loftFile = "../../testdata/register/loft.gear.yaml"

// newReader compiles the schemas once for all tests.
var newReader = sync.OnceValues(NewReader)

func mustReader(t testing.TB) *Reader {
	t.Helper()
	rd, err := newReader()
	if err != nil {
		t.Fatal(err)
	}
	return rd
}

func loft(t testing.TB) string {
	t.Helper()
	b, err := os.ReadFile(loftFile)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func mustYAML(t testing.TB, text string) *Register {
	t.Helper()
	r, err := mustReader(t).ReadYAML("loft.gear.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func ptr[T any](v T) *T { return &v }

func day(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }

// The tonne-force, the short ton and the inch are exact: NIST SP 811, appendix
// B; the values are from memory.
const (
	tonneForce = 1000 * 9.80665
	inch       = 0.0254
)

func near(x, y float64) bool { return x > y*(1-1e-12) && x < y*(1+1e-12) }

func TestReadYAML(t *testing.T) {
	r := mustYAML(t, loft(t))
	if diff := cmp.Diff([]File{{Name: "loft.gear.yaml", Title: "Rigging loft, slings and fittings", Site: "Harrow Point"}}, r.Files); diff != "" {
		t.Error(diff)
	}
	i, ok := r.Find("WR-0231")
	if !ok {
		t.Fatal("not found")
	}
	s := i.Gear.(*gear.WireRopeSling)
	if s.ID != "WR-0231" || s.Pointer != "/items/0" || s.Class != "6x36" || *s.Diameter != 0.026 || *s.Upper.Length != 0.52 || !near(s.Tag.RatedLoad.Newtons, 7.8*tonneForce) {
		t.Errorf("%+v", s)
	}
	c := i.Certificate
	if c.Number != "C-20931" || !c.Date.Equal(day(2025, 11, 3)) || c.By != "Maker A" || !near(c.ProofLoad.Newtons, 15.6*tonneForce) || c.Serial != "77190" {
		t.Errorf("%+v", c)
	}
	if i.Status != InService || i.RatedLoad != nil || !*i.HistoryKnown || !i.Bought.Equal(day(2025, 11, 20)) || i.Location != "loft, rack 4" || i.Since != nil {
		t.Errorf("%+v", i)
	}
	want := Inspection{
		Date: day(2026, 5, 11), Kind: Periodic, Inspector: "Q. Example", Qualification: "competent person", Outcome: Passed,
		NextDue: ptr(day(2026, 11, 11)), Service: gear.SevereService, Report: "R-2026-114",
		Found: &Found{BrokenWiresInOneLay: ptr(2), DiameterNow: ptr(quantity.Length(0.0256)), Corrosion: "light", Kink: ptr(false), TagLegible: ptr(true)},
	}
	if diff := cmp.Diff(want, i.Inspections[0]); diff != "" {
		t.Error(diff)
	}
	k, _ := r.Find("SH 014/b")
	if k.Status != Quarantined || !k.Since.Equal(day(2026, 10, 1)) || k.Why == "" || k.Overloaded.ClearedOn != nil || k.HistoryKnown != nil {
		t.Errorf("%+v", k)
	}
	if !near(k.RatedLoad.Newtons, 9.5*2000*0.45359237*9.80665) || *k.Gear.(*gear.Shackle).PinDiameter != 1.25*inch {
		t.Errorf("%+v", k.RatedLoad)
	}
	b, _ := r.Find("BR-3")
	if diff := cmp.Diff(&Members{Master: "ML-7", Groups: []Group{{Legs: []string{"WR-0231"}}}}, b.Members); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]Kept{{"Color", "green"}}, b.Kept); diff != "" {
		t.Error(diff)
	}
}

func TestNewest(t *testing.T) {
	i := &Item{Inspections: []Inspection{
		{Kind: Periodic, Date: day(2025, 1, 2), Report: "a"},
		{Kind: Periodic, Date: day(2026, 1, 2), Report: "b"},
		{Kind: Periodic, Date: day(2026, 1, 2), Report: "c"},
		{Kind: Frequent, Date: day(2026, 7, 1), Report: "d"},
		{Kind: Periodic, Date: day(2024, 1, 2), Report: "e"},
	}}
	for kind, want := range map[InspectionKind]string{Periodic: "c", Frequent: "d", Thorough: ""} {
		got, ok := i.Newest(kind)
		if ok != (want != "") || ok && got.Report != want {
			t.Errorf("%s: %+v", kind, got)
		}
	}
}

func TestPlacesInYAML(t *testing.T) {
	text := loft(t)
	r := mustYAML(t, text)
	i, _ := r.Find("WR-0231")
	p := i.Place("/certificate/date")
	if p.String() != "loft.gear.yaml#/items/0/certificate/date" {
		t.Error(p)
	}
	at := RangeIn([]byte(text), p)
	line := strings.Split(text, "\n")[at.From.Line-1]
	if got := line[at.From.Column-1 : at.To.Column-1]; got != "2025-11-03" {
		t.Errorf("%q", got)
	}
	if where := i.Place("").Where(); where != "loft.gear.yaml:5:13" {
		t.Error(where)
	}
}

// TestBadYAML: what is wrong with a register, and where. Each case changes the
// register that is read elsewhere.
func TestBadYAML(t *testing.T) {
	for _, c := range []struct{ name, old, new, id, message string }{
		{"bare number", "diameter: 26 mm", "diameter: 26", "register/unit", "no unit"},
		{"day that does not exist", "date: 2026-05-11", "date: 2026-02-30", "register/bad_date", "calendar"},
		{"misspelt field of the gear", "diameter: 26", "diametr: 26", "register/unknown_key", "did you mean `diameter`?"},
		{"misspelt field of the record", "location:", "locaton:", "register/unknown_key", "did you mean `location`?"},
		{"id", "- number: WR-0231", "- id: WR-0231", "register/unknown_key", "write `number`"},
		{"no number", "- number: WR-0231\n    kind", "- kind", "register/missing_key", "`number`"},
		{"blank after the number", "number: HK-2", "number: \"HK-2 \"", "register/bad_text", "ends with a blank"},
		{"empty number", "number: HK-2", "number: \"\"", "register/bad_text", "empty"},
		{"inspection of a plan", "    bought: 2025-11-20", "    inspection: {date: 2026-01-01}", "register/unknown_key", "write `inspections`"},
		{"field of another kind", "pattern: bow", "pattern: bow\n    class: 6x36", "register/unknown_key", "`class`"},
		{"unknown kind", "kind: shackle", "kind: shackel", "register/not_allowed", "did you mean `shackle`?"},
		{"sign of another kind", "pin_original: false", "birdcage: false", "register/unknown_key", "birdcage"},
		{"sign without a unit", "wear: 4 %", "wear: 4", "register/unit", "no unit"},
		{"negative count", "broken_wires_in_one_lay: 2", "broken_wires_in_one_lay: -2", "register/out_of_range", "at least 0"},
		{"status", "status: in_service", "status: ok", "register/not_allowed", "quarantined"},
		{"inspection without a day", "{date: 2026-06-02, kind", "{kind", "register/missing_key", "`date`"},
		{"outcome", "outcome: failed", "outcome: bad", "register/not_allowed", "passed_with_remarks"},
		{"number twice", "number: HK-2", "number: ML-7", DuplicateNumber, "two items"},
		{"serial twice", "serial: K9", "serial: \"77190\"", DuplicateSerial, "same serial number"},
		{"serial twice, one maker unknown", "serial: K9", "serial: M7", DuplicateSerial, "same serial number"},
		{"leg not on file", "legs: [WR-0231]", "legs: [WR-0232]", UnknownReference, "did you mean `WR-0231`?"},
		{"newer version", "liftlint: 1", "liftlint: 2", "register/version", "the register is written for version 2"},
		{"a plan's head", "register: {", "lift: {", "register/unknown_key", "lift"},
		{"text for a list", "inspections:\n      - {date: 2026-10-01, kind: thorough, outcome: failed, found: {pin_original: false, wear: 4 %, bent: false, cracked: false}}", "inspections: none", "register/wrong_type", "a list"},
		{"not YAML", "register: {", "register: {{", "yaml/key_not_string", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := strings.Replace(loft(t), c.old, c.new, 1)
			if text == loft(t) {
				t.Fatal("nothing changed")
			}
			r, err := mustReader(t).ReadYAML("loft.gear.yaml", []byte(text))
			var ps Problems
			if !errors.As(err, &ps) || r != nil {
				t.Fatalf("%v, %v", r, err)
			}
			for _, p := range ps {
				if p.ID == c.id && strings.Contains(p.Message, c.message) && p.Place.Range.From.Line > 0 {
					return
				}
			}
			t.Errorf("want %s %q, got\n%v", c.id, c.message, ps)
		})
	}
}

// TestOneMakerEach: the same serial number of two makers is no fault.
func TestOneMakerEach(t *testing.T) {
	text := strings.Replace(loft(t), "serial: K9", "serial: M7\n    maker: Maker A", 1)
	if r := mustYAML(t, text); len(r.Items) != 5 {
		t.Error(len(r.Items))
	}
}

func TestJoinAcrossFiles(t *testing.T) {
	rd := mustReader(t)
	one := func(name, number, serial string) *Register {
		r, err := rd.ReadYAML(name, []byte("liftlint: 1\nregister: {title: a}\nitems: [{number: "+number+", kind: hook, serial: "+serial+"}]\n"))
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	r, err := Join(one("a.gear.yaml", "H1", "x"), one("b.gear.yaml", "H2", "w"))
	if err != nil || len(r.Files) != 2 {
		t.Fatal(err)
	}
	if i, ok := r.Find("H2"); !ok || i.Place("").File != "b.gear.yaml" {
		t.Error(i)
	}
	_, err = Join(one("a.gear.yaml", "H1", "x"), one("b.gear.yaml", "H1", "x"))
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != 2 || ps[0].Place.File != "b.gear.yaml" || ps[0].Other.File != "a.gear.yaml" {
		t.Error(err)
	}
}

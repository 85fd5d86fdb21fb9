package capacity

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/quantity"
)

// What the cases below are about.
var (
	fiberCore    = Thermal{Kind: WireRope, Core: "fiber", Sleeves: []string{"steel", "steel"}}
	wireCore     = Thermal{Kind: WireRope, Core: "iwrc", Sleeves: []string{"steel", "none"}}
	aluminumEnd  = Thermal{Kind: WireRope, Core: "iwrc", Sleeves: []string{"steel", "aluminum"}}
	socketEnd    = Thermal{Kind: WireRope, Core: "iwrc", Sleeves: []string{"socket"}}
	noCore       = Thermal{Kind: WireRope, Sleeves: []string{"steel"}}
	noSleeves    = Thermal{Kind: WireRope, Core: "iwrc"}
	oneSleeve    = Thermal{Kind: WireRope, Core: "iwrc", Sleeves: []string{"steel", ""}}
	tuckedLoop   = Thermal{Kind: Grommet, Core: "iwrc"}
	grade80      = Thermal{Kind: Chain, Grade: "80"}
	grade100     = Thermal{Kind: Chain, Grade: "100"}
	noGrade      = Thermal{Kind: Chain}
	web          = Thermal{Kind: Web}
	round        = Thermal{Kind: Round}
	coated, bare = Thermal{Kind: Mesh, Coating: "coated"}, Thermal{Kind: Mesh, Coating: "none"}
	shackle      = Thermal{Kind: Hardware}
)

// TestTemperatureFactor: fiber cores to 82.2 C (ASME B30.9, from memory) and 93.3
// C (29 CFR 1926.251(c), read), other cores from -40 (ASME, from memory) or -51.1
// to 204.4 C (29 CFR, read); by EN 13414-1 (read in a reprint) 100 C, with
// aluminum sleeves 150 C, with steel 90, 75 and 65 % up to 200, 300 and 400 C;
// webbing to 82.2 C (29 CFR 1910.184(i), from memory), by EN 1492-1 100 C and of
// polypropylene 80 C (from memory), yarns of high-modulus polyethylene 60 C (ASME
// B30.9, from memory); fittings from -40 to 204.4 C (ASME B30.26, from memory) or -20
// to 200 C (EN 13889, from memory); chain as trade tables have it.
func TestTemperatureFactor(t *testing.T) {
	for name, c := range map[string]struct {
		what            Thermal
		practice        BridlePractice
		lowest, highest float64
		factor          float64
		why             string
	}{
		"fiber":                        {fiberCore, ByAngle, -40, 82.2, 1, ""},
		"fiber, ASME":                  {fiberCore, ByAngle, 10, 82.3, 0, "82.3 C is over 82.2 C, where ASME B30.9 (from memory) ends for fiber cores"},
		"fiber, federal":               {fiberCore, ByAngle, 10, 94, 0, "94 C is over 93.3 C, where 29 CFR 1926.251(c) ends for fiber cores"},
		"fiber, EN":                    {fiberCore, ByBand, -40, 100, 1, ""},
		"fiber, over EN":               {fiberCore, ByBand, 10, 100.1, 0, "EN 13414-1"},
		"wire":                         {wireCore, ByAngle, -40, 204.4, 1, ""},
		"wire, hot":                    {wireCore, ByAngle, 10, 204.5, 0, "29 CFR"},
		"wire, cold by ASME":           {wireCore, ByAngle, -45, 10, 0, "-45 C is under -40 C, where ASME B30.9 (from memory) ends for wire cores"},
		"wire, cold by 29 CFR":         {wireCore, ByAngle, -52, 10, 0, "under -51.1 C, where 29 CFR"},
		"steel, EN 150":                {wireCore, ByBand, -40, 150, 1, ""},
		"steel, EN 200":                {wireCore, ByBand, 10, 200, 0.9, "up to 200 C EN 13414-1 (in a reprint) leaves 0.9 of a rating for wire cores"},
		"steel, EN over 200":           {wireCore, ByBand, 10, 200.1, 0.75, "0.75"},
		"steel, EN 400":                {wireCore, ByBand, 10, 400, 0.65, "0.65"},
		"steel, over EN":               {wireCore, ByBand, 10, 401, 0, "over 400 C"},
		"steel, cold EN":               {wireCore, ByBand, -41, 10, 0, "under -40 C"},
		"aluminum, EN":                 {aluminumEnd, ByBand, 10, 150, 1, ""},
		"aluminum, over EN":            {aluminumEnd, ByBand, 10, 151, 0, "aluminum sleeves"},
		"aluminum, US":                 {aluminumEnd, ByAngle, 10, 151, 0, "aluminum sleeves"},
		"socket":                       {socketEnd, ByBand, 10, 82, 1, ""},
		"socket, hot":                  {socketEnd, ByAngle, 10, 83, 0, "sockets"},
		"core not known":               {noCore, ByAngle, 10, 82, 1, ""},
		"core not known, hot":          {noCore, ByAngle, 10, 90, 0, "fiber cores, and its core is not known"},
		"core not known, EN":           {noCore, ByBand, 10, 101, 0, "core is not known"},
		"sleeves not known":            {noSleeves, ByBand, 10, 82, 1, ""},
		"sleeves not known, hot":       {noSleeves, ByBand, 10, 151, 0, "sleeve is not known"},
		"one sleeve not known, hot":    {oneSleeve, ByBand, 10, 151, 0, "sleeve is not known"},
		"grommet":                      {tuckedLoop, ByBand, 10, 200, 0.9, "0.9"},
		"grommet by angle":             {tuckedLoop, ByAngle, 10, 204, 1, ""},
		"chain 80":                     {grade80, ByAngle, -40, 204.4, 1, ""},
		"chain 80, 500 F":              {grade80, ByAngle, 10, 260, 0.9, "US trade tables"},
		"chain 80, 600 F":              {grade80, ByAngle, 10, 315, 0.85, "0.85"},
		"chain 80, 1000 F":             {grade80, ByAngle, 10, 537, 0.5, "0.5"},
		"chain 80, beyond":             {grade80, ByAngle, 10, 540, 0, "chain of grade 80"},
		"chain 80 by band":             {grade80, ByBand, 10, 300, 0.9, "0.9"},
		"chain 80 by band, beyond":     {grade80, ByBand, 10, 401, 0, "over 400 C"},
		"chain 100":                    {grade100, ByAngle, 10, 260, 0.85, "0.85"},
		"chain 100 by band":            {grade100, ByBand, 10, 390, 0, "over 380 C"},
		"chain, grade not known":       {noGrade, ByAngle, 10, 260, 0.85, "grade 100, and its grade is not known"},
		"chain, cold":                  {grade100, ByAngle, -41, 10, 0, "under -40 C"},
		"web":                          {web, ByAngle, -40, 82.2, 1, ""},
		"web, hot":                     {web, ByAngle, 10, 82.3, 0, "29 CFR 1910.184(i) (from memory) ends for webbing of"},
		"web, hot, material not known": {web, ByBand, 10, 80.1, 0, "EN 1492-1 (from memory) ends for webbing of polypropylene, and its material is not known"},
		"polyester, EN":                {Thermal{Kind: Web, Material: "polyester"}, ByBand, -40, 100, 1, ""},
		"polypropylene, EN":            {Thermal{Kind: Web, Material: "polypropylene"}, ByBand, -40, 81, 0, "over 80 C"},
		"polypropylene":                {Thermal{Kind: Web, Material: "polypropylene"}, ByAngle, -40, 90, 1, ""},
		"hmpe":                         {Thermal{Kind: Round, Material: "hmpe"}, ByBand, -40, 60, 1, ""},
		"hmpe, hot":                    {Thermal{Kind: Round, Material: "hmpe"}, ByAngle, 10, 61, 0, "over 60 C"},
		"yarns not known":              {round, ByAngle, 10, 61, 0, "high-modulus polyethylene, and its material is not known"},
		"round, hot":                   {round, ByAngle, 10, 100, 0, "round slings"},
		"round, cold":                  {round, ByAngle, -41, 10, 0, "ASME"},
		"mesh, bare":                   {bare, ByAngle, -28, 287, 1, ""},
		"mesh, coated":                 {coated, ByAngle, -18, 20, 0, "coated mesh"},
		"mesh, coated, hot":            {coated, ByBand, 0, 94, 0, "coated mesh"},
		"mesh, coating not known":      {Thermal{Kind: Mesh}, ByAngle, 0, 94, 0, "coating is not known"},
		"fitting":                      {shackle, ByAngle, -40, 204.4, 1, ""},
		"fitting, hot":                 {shackle, ByAngle, 10, 205, 0, "ASME B30.26 (from memory) ends for fittings"},
		"fitting, cold":                {shackle, ByAngle, -40.1, 10, 0, "fittings"},
		"fitting, hot, EN":             {Thermal{Kind: Hardware, Steel: "other"}, ByBand, 10, 201, 0, "EN 13889 (from memory) ends for fittings"},
		"fitting, cold, EN":            {Thermal{Kind: Hardware, Steel: "other"}, ByBand, -21, 10, 0, "EN 13889"},
		"link of grade 8, EN":          {Thermal{Kind: Hardware, Steel: "grade_8"}, ByBand, -40, 300, 0.9, "fittings of grade 8"},
		"link of grade 10, US":         {Thermal{Kind: Hardware, Steel: "grade_10"}, ByAngle, -40, 260, 0.85, "fittings of grade 10"},
		"kind not known":               {Thermal{}, ByAngle, 10, 20, 0, "no limits"},
		"other kind":                   {Thermal{Kind: "rope of hemp"}, ByAngle, 10, 20, 0, "no limits"},
		"other core":                   {Thermal{Kind: WireRope, Core: "wsc", Sleeves: []string{"steel"}}, ByAngle, 10, 20, 0, `core is "wsc"`},
		"other sleeve":                 {Thermal{Kind: WireRope, Core: "iwrc", Sleeves: []string{"copper"}}, ByAngle, 10, 20, 0, `sleeve is "copper"`},
		"other grade":                  {Thermal{Kind: Chain, Grade: "70"}, ByAngle, 10, 20, 0, `grade is "70"`},
		"no practice":                  {wireCore, "", 10, 20, 0, "practice"},
		"practice of rows for both":    {shackle, anyPractice, 10, 20, 0, "practice"},
		"colder than cold":             {wireCore, ByAngle, 20, 10, 0, "no temperatures"},
		"lowest is no number":          {wireCore, ByAngle, math.NaN(), 10, 0, "no temperatures"},
		"highest is no number":         {wireCore, ByAngle, 10, math.NaN(), 0, "no temperatures"},
		"highest without end":          {wireCore, ByAngle, 10, math.Inf(1), 0, "no temperatures"},
		"lowest under absolute zero":   {wireCore, ByAngle, -274, 10, 0, "no temperatures"},
	} {
		got, ok, why := TemperatureFactor(c.what, c.practice, c.lowest, c.highest)
		if got != c.factor || ok != (c.factor > 0) || !strings.Contains(why, c.why) || (c.why == "") != (why == "") {
			t.Errorf("%s: %g, %t, %q; not %g, %q", name, got, ok, why, c.factor, c.why)
		}
	}
}

// TestColdLimitInCelsius: one official page converts -60 F to 15.55 C; it is -51.1
// C, by (F - 32) / 1.8.
func TestColdLimitInCelsius(t *testing.T) {
	limit, err := quantity.ParseTemperature("-60 F")
	if err != nil || math.Abs(float64(limit)-(-60-32)/1.8) > 1e-9 {
		t.Fatalf("-60 F is %g C, %v", float64(limit), err)
	}
	found := false
	for _, l := range thermalLimits() {
		if l.cited == "29 CFR 1926.251(c)" && l.of.is == "iwrc" {
			found = math.Abs(l.lowestC+51.111) < 0.001
		}
	}
	if !found {
		t.Error("29 CFR does not end at -51.1 C for wire cores")
	}
	if got, ok, why := TemperatureFactor(wireCore, ByAngle, -10, 15); got != 1 || !ok {
		t.Errorf("-10 to 15 C: %g, %t, %s", got, ok, why)
	}
}

// TestTemperatureTableFalls: each source's steps rise in temperature and fall in
// what they leave, from 1.
func TestTemperatureTableFalls(t *testing.T) {
	for _, l := range thermalLimits() {
		if l.called == "" || l.cited == "" || l.steps[0].factor != 1 || l.lowestC > 0 {
			t.Errorf("%+v", l)
		}
		for i, s := range l.steps[1:] {
			if before := l.steps[i]; s.highestC <= before.highestC || s.factor >= before.factor || s.factor <= 0 {
				t.Errorf("%s by %s: %+v follows %+v", l.called, l.cited, s, before)
			}
		}
	}
}

func drawThermal(t *rapid.T) Thermal {
	kind := rapid.SampledFrom([]Kind{WireRope, Grommet, Chain, Web, Round, Mesh, Hardware}).Draw(t, "kind")
	materials := []string{"polyester", "nylon", "polypropylene", ""}
	if kind == Round {
		materials = append(materials, "hmpe", "aramid")
	}
	sleeve := rapid.SampledFrom([]string{"aluminum", "steel", "none", "socket", ""})
	return Thermal{
		Kind:     kind,
		Core:     rapid.SampledFrom([]string{"fiber", "iwrc", ""}).Draw(t, "core"),
		Sleeves:  rapid.SliceOfN(sleeve, 0, 2).Draw(t, "sleeves"),
		Grade:    rapid.SampledFrom([]string{"80", "100", ""}).Draw(t, "grade"),
		Coating:  rapid.SampledFrom([]string{"coated", "none", ""}).Draw(t, "coating"),
		Material: rapid.SampledFrom(materials).Draw(t, "material"),
		Steel:    rapid.SampledFrom([]string{"grade_8", "grade_10", "other", ""}).Draw(t, "steel"),
	}
}

// TestHotterAndColderLeavesNoMore, and neither does knowing less.
func TestHotterAndColderLeavesNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		what := drawThermal(t)
		p := rapid.SampledFrom([]BridlePractice{ByAngle, ByBand}).Draw(t, "practice")
		lowest := rapid.Float64Range(-70, 40).Draw(t, "lowest")
		highest := rapid.Float64Range(lowest, 600).Draw(t, "highest")
		colder, hotter := rapid.Float64Range(-70, lowest).Draw(t, "colder"), rapid.Float64Range(highest, 700).Draw(t, "hotter")
		mild, ok, why := TemperatureFactor(what, p, lowest, highest)
		harsh, _, _ := TemperatureFactor(what, p, colder, hotter)
		if harsh > mild || mild > 1 || ok != (mild > 0) || (why == "") != (mild == 1) {
			t.Fatalf("%+v: %g, %t, %q; colder and hotter %g", what, mild, ok, why, harsh)
		}
		less := what
		less.Core, less.Grade, less.Coating, less.Material, less.Steel, less.Sleeves = "", "", "", "", "", []string{""}
		if unknown, _, _ := TemperatureFactor(less, p, lowest, highest); unknown > mild {
			t.Fatalf("%+v: %g, with nothing known %g", what, mild, unknown)
		}
	})
}

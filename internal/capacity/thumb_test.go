package capacity

import (
	"math"
	"testing"

	"liftlint/internal/quantity"
)

var thumbs = map[string]func(float64) float64{
	"rope": RopeThumbN, "metric rope": MetricRopeThumbN, "chain": ChainThumbN, "shackle": ShackleThumbN,
}

func TestPublishedRulesOfThumb(t *testing.T) {
	for _, row := range published(t, "rules-of-thumb.csv") {
		got, want, half := thumbs[row["what"]](meters(t, row["size"])), newtons(t, row["answer"]), newtons(t, row["rounding"])/2
		if math.Abs(got-want) > half*(1+1e-6) { // 2343.75 lb is printed as 2343.8
			t.Errorf("case %s, %s: %.1f N; published %s", row["case"], row["what"], got, row["answer"])
		}
	}
}

func meters(t *testing.T, text string) float64 {
	t.Helper()
	l, err := quantity.ParseLength(text)
	if err != nil {
		t.Fatal(err)
	}
	return float64(l)
}

func newtons(t *testing.T, text string) float64 {
	t.Helper()
	l, err := quantity.ParseLoad(text)
	if err != nil {
		t.Fatal(err)
	}
	return l.Newtons
}

// TestRuleOfThumbIsASquare: one page prints 2d x 8 for d^2 x 8, which for 14 mm
// would be 224 kg instead of 1,568.
func TestRuleOfThumbIsASquare(t *testing.T) {
	trap := 2 * 14 * 8 * tonneN / 1000
	if got := MetricRopeThumbN(0.014); math.Abs(got-trap) < 0.5*got {
		t.Errorf("14 mm: %g N, as the misprint has it", got)
	}
	for name, thumb := range thumbs {
		if got := thumb(0.028) / thumb(0.014); math.Abs(got-4) > 1e-12 {
			t.Errorf("%s: twice the size holds %g times as much", name, got)
		}
		for _, none := range []float64{0, -0.014, math.NaN(), math.Inf(1)} {
			if got := thumb(none); got != 0 {
				t.Errorf("%s: size %g gives %g N", name, none, got)
			}
		}
	}
}

// TestRopeThumbsAgree: the inch rule and the metric one come from elsewhere and
// are 40 % apart; both lie under what a sling of 6x19 rope of improved plow steel
// can be rated for, and not under half of it.
func TestRopeThumbsAgree(t *testing.T) {
	for _, row := range published(t, "rope-strengths.csv") {
		d := inches(t, row["diameter_in"])
		fifth := value(t, row["fifth_of_strength_kn"]) * 1000
		for _, name := range []string{"rope", "metric rope"} {
			if got := thumbs[name](d); got > fifth || got < fifth/2 {
				t.Errorf("%s of %s in: %.0f N beside a fifth of its strength, %.0f", name, row["diameter_in"], got, fifth)
			}
		}
		if ratio := RopeThumbN(d) / MetricRopeThumbN(d); math.Abs(ratio-1.406) > 0.001 {
			t.Errorf("%s in: the inch rule gives %.3f times the metric one", row["diameter_in"], ratio)
		}
	}
}

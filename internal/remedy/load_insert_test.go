package remedy

import (
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

func TestStrongerInsert(t *testing.T) {
	metric, us := New(nil, conditions(), nil, quantity.Metric), New(nil, conditions(), nil, quantity.US)
	tonne := facts.Attachment{PullN: ptr(1000 * quantity.StandardGravity)}
	const after = " in the direction of the pull, or less pull on it: steeper legs"
	for _, c := range []struct {
		m        *Mender
		measured string
		limit    float64
		want     string
	}{
		{metric, "breaking_over_pull_times", 4, "an insert that holds at least 4 t" + after},
		{metric, "breaking_over_pull_times", 2, "an insert that holds at least 2 t" + after},
		{metric, "hardware_breaking_over_pull_times", 5, "lifting hardware that holds at least 5 t" + after},
		{us, "breaking_over_pull_times", 2, "an insert that holds at least 4410 lb" + after}, // 4409.2 lb
	} {
		if got, ok := c.m.Mend("stronger_insert", facts.ViewOf(tonne), c.measured, c.limit); !ok || got != c.want {
			t.Errorf("%q, %v", got, ok)
		}
	}
	steep := facts.Attachment{PullN: tonne.PullN, PullAngleFromHorizontalDeg: ptr(80.0)}
	if got, _ := metric.Mend("stronger_insert", facts.ViewOf(steep), "breaking_over_pull_times", 4); got != "an insert that holds at least 4 t in the direction of the pull" {
		t.Errorf("under a steep leg: %q", got)
	}
	for _, a := range []facts.Attachment{{}, {PullN: ptr(0.0)}} {
		if got, ok := metric.Mend("stronger_insert", facts.ViewOf(a), "breaking_over_pull_times", 4); ok {
			t.Errorf("without a pull: %q", got)
		}
	}
}

package capacity

import "testing"

// TestFrictionIsLow: no surface is taken to hold more than the low end of what is
// usual (common practice), and none that is not known holds anything.
func TestFrictionIsLow(t *testing.T) {
	for surface, most := range map[Surface]float64{DrySteel: 0.15, Wood: 0.3, WetOrOily: 0.1} {
		if mu, ok := Friction(surface); !ok || mu <= 0 || mu > most {
			t.Errorf("%s: %g, %v", surface, mu, ok)
		}
	}
	if mu, ok := Friction(""); ok || mu != 0 {
		t.Errorf("of a surface that is not known: %g", mu)
	}
}

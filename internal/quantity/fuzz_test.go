package quantity

import "testing"

// FuzzParse holds every kind to its promises for any text: no panic, an error
// that tells what to write, and a value that prints and reads back in every
// unit.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		"8650 kg", "12 ft 6-1/2 in", "1-1/8 in", "-40 F", "2 %", "1,500 kg", "12'-6\"", "3 ton", "1e3 kg",
		"12 kN m", "9000 ft-lbf", "5 kip ft", "", "-", "1/0 in", "\u22123 m", "0x1p-2 m", "1 000 000 N", "NaN", "½ in", "4200", "10 t/m^2", "5 kn", "1/",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, k := range Kinds() {
			si, err := k.Parse(text)
			if err != nil {
				checkError(t, k, text, err)
				continue
			}
			for _, name := range k.Units() {
				if back, err := k.Parse(exactText(k, si, name)); err != nil || back != si {
					t.Errorf("%q is %v, in %s %q, and back %v, %v", text, si, name, exactText(k, si, name), back, err)
				}
			}
		}
	})
}

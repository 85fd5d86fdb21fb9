package keyname

import "testing"

func TestOf(t *testing.T) {
	l := New(map[string]string{"hook/1": "hook to A", "hook/12": "hook to B", "SB1.left/1": "SB1.left to C"})
	for key, want := range map[string]string{
		"leg/hook/1":             "leg/hook to A",
		"leg/hook/12":            "leg/hook to B",
		"leg/hook/13":            "leg/hook/13",
		"leg/xhook/1":            "leg/xhook/1",
		"part/hook/1/S1":         "part/hook to A/S1",
		"fit/SB1.left/1/K1/pin":  "fit/SB1.left to C/K1/pin",
		"leg/SB1xleft/1":         "leg/SB1xleft/1",
		"hook/1, hook/12 hook/1": "hook to A, hook to B hook to A",
		"load":                   "load",
		"":                       "",
	} {
		if got := l.Of(key); got != want {
			t.Errorf("%q gives %q, not %q", key, got, want)
		}
	}
	if got := (Legs{}).Of("leg/hook/1"); got != "leg/hook/1" {
		t.Error(got)
	}
}

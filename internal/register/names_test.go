package register

import "testing"

func TestNames(t *testing.T) {
	for path, want := range map[string][3]bool{
		"loft.gear.yaml":          {true, false, true},
		"a/Loft.GEAR.YML":         {true, false, true},
		"yard.columns.yaml":       {false, true, true},
		"yard.columns.yml":        {false, true, true},
		"yard.csv":                {false, false, true},
		"Yard.CSV":                {false, false, true},
		"gear.yaml":               {false, false, false},
		"loft.gear.yaml.bak":      {false, false, false},
		"pump.lift.yaml":          {false, false, false},
		"register.gear.yaml/x.md": {false, false, false},
	} {
		if got := [3]bool{IsRegister(path), IsColumns(path), IsPart(path)}; got != want {
			t.Errorf("%s: %v, want %v", path, got, want)
		}
	}
}

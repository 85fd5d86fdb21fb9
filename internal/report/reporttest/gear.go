package reporttest

import (
	"context"
	"testing"
	"time"

	"liftlint/internal/lint"
	"liftlint/internal/register"
	"liftlint/internal/report"
)

const loft = `liftlint: 1
register: {title: Loft 鋼}
items:
  - number: HK-1
    kind: hook
    serial: "77"
    status: in_service
    history_known: true
    inspections:
      - {date: 2025-06-01, kind: periodic, inspector: Q. Example, outcome: passed, next_due: 2026-06-01, found: {cracked: false}}
  - {number: HK-2, kind: hook, status: scrapped}
`

const yard = `number;kind;serial;status;history_known
SH-1;shackle;K1;in_service;true
SH-2;shackle;K2;in_service;
`

// Gear is a run over two registers, one in YAML and one in a table, judged for a
// day; or for none.
func Gear(t testing.TB, day string) report.Run {
	t.Helper()
	o := lint.Options{Stage: "review"}
	if d, err := time.Parse(time.DateOnly, day); err == nil {
		o.On = &d
	}
	l, err := lint.New(o)
	if err != nil {
		t.Fatal(err)
	}
	rd, err := register.NewReader()
	if err != nil {
		t.Fatal(err)
	}
	first, err := rd.ReadYAML("gear/loft.gear.yaml", []byte(loft))
	if err != nil {
		t.Fatal(err)
	}
	second, err := rd.ReadTable("gear/yard.csv", []byte(yard), nil)
	if err != nil {
		t.Fatal(err)
	}
	r, err := register.Join(first, second.Register)
	if err != nil {
		t.Fatal(err)
	}
	results, err := l.WithRegisters(lint.RegisterText("gear/loft.gear.yaml", loft)).GearResults(context.Background(), r)
	if err != nil {
		t.Fatal(err)
	}
	return report.Run{Results: results}
}

// EachGear writes registers as a format does: judged for a day, for none, and one that
// can't be read. Each is as its golden file has it and says of nothing that it is fine.
// sound takes out of what was written what only looks like it; nil leaves all.
func EachGear(t *testing.T, ending string, write func(report.Run) string, sound func(string) string) {
	t.Helper()
	for name, run := range map[string]report.Run{"gear": Gear(t, "2026-12-04"), "gear_no_day": Gear(t, ""), "gear_faulty": FaultyGear(t)} {
		got := write(run)
		Golden(t, name+ending, got)
		if sound != nil {
			got = sound(got)
		}
		NeverSaysSafe(t, got)
	}
}

// FaultyGear is a run over a register that can't be read.
func FaultyGear(t testing.TB) report.Run {
	t.Helper()
	rd, err := register.NewReader()
	if err != nil {
		t.Fatal(err)
	}
	_, err = rd.ReadTable("gear/yard.csv", []byte("number;kind;serial;inspections.date;inspections.kind\nA;shackle;1;03/04/2026;periodic\nB;shackle;1;;\nC;shackle;1;;\n"), nil)
	problems, ok := err.(register.Problems)
	if !ok {
		t.Fatal(err)
	}
	return report.Run{Results: lint.GearNotValid(problems)}
}

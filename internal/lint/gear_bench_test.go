package lint_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// BenchmarkCheckGear reads a table of 100,000 items, half of them rope slings and
// half shackles, and judges each by itself. Aim: under 10 s on two cores, and
// under 500 MB.
//
//	2026-11-27  10.5 s on two cores that others used too (15 s of processor time in
//	            all, so 7.5 s on two that are free); 450 to 500 MB from the
//	            system, 460 MB resident as a process
//	2026-11-27  7.7 s of processor time in all, 5.4 s on the same two cores while
//	            they were not busy; 390 to 430 MB: rules see what they read of the
//	            facts, and no more is converted; each is shown only the records that
//	            its conditions keep; signs are looked for before anything is written
//	            of them; places are led into the register where a finding stands
//	2026-11-28  12.3 s of processor time, 7.0 s on two cores that were little used;
//	            437 MB: every rule is asked that reads what gear by itself has
func BenchmarkCheckGear(b *testing.B) {
	folder := b.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(folder, name)
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
		return path
	}
	write("gear.csv", largeTable(100_000))
	columns := write("gear.columns.yaml", tableColumns)
	on := time.Date(2026, 12, 4, 0, 0, 0, 0, time.UTC)
	l := linter(b, lint.Options{On: &on})
	b.ReportAllocs()
	for b.Loop() {
		registers := lint.NewRegisters(columns)
		r, err := registers.Register()
		if err != nil {
			b.Fatal(err)
		}
		count, err := l.WithRegisters(registers).CheckGear(context.Background(), r, func([]finding.Finding) error { return nil })
		if err != nil || count.Judged != 100_000 {
			b.Fatal(count, err)
		}
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		b.ReportMetric(float64(m.Sys)/1e6, "MB-sys")
		b.ReportMetric(float64(count.Findings[finding.Error]), "errors")
	}
}

const tableColumns = `
liftlint: 1
file: gear.csv
columns:
  - {head: No., field: number}
  - {head: Type, field: kind}
  - {head: Serial, field: serial}
  - {head: Maker, field: maker}
  - {head: RL, field: rated_load, unit: t}
  - {head: Rope, field: diameter, unit: mm}
  - {head: Length, field: length, unit: m}
  - {head: Status, field: status}
  - {head: Insp., field: inspections.date}
  - {head: Sort, field: inspections.kind}
  - {head: By, field: inspections.inspector}
  - {head: Result, field: inspections.outcome}
  - {head: Due, field: inspections.next_due}
  - {head: Broken wires, field: inspections.found.broken_wires_in_one_lay}
  - {head: Kink, field: inspections.found.kink}
  - {head: Wear, field: inspections.found.wear, unit: "%"}
  - {head: Bent, field: inspections.found.bent}
`

func largeTable(rows int) string {
	var b strings.Builder
	b.WriteString("No.;Type;Serial;Maker;RL;Rope;Length;Status;Insp.;Sort;By;Result;Due;Broken wires;Kink;Wear;Bent\n")
	for i := range rows {
		d := time.Date(2025, 6, 1+i%600, 0, 0, 0, 0, time.UTC)
		own := fmt.Sprintf("wire_rope_sling;S%07d;Maker %c;%d.5;%d;%d.25", i, 'A'+rune(i%7), 1+i%30, 10+i%40, 1+i%20)
		signs := fmt.Sprintf("%d;%t;;", i%12, i%50 == 0)
		if i%2 == 1 {
			own = fmt.Sprintf("shackle;S%07d;Maker %c;%d.5;;", i, 'A'+rune(i%7), 1+i%30)
			signs = fmt.Sprintf(";;%d;%t", i%11, i%50 == 1)
		}
		fmt.Fprintf(&b, "G-%06d;%s;in_service;%s;periodic;Q. Example;passed;%s;%s\n", i, own, d.Format(time.DateOnly), d.AddDate(1, 0, 0).Format(time.DateOnly), signs)
	}
	return b.String()
}

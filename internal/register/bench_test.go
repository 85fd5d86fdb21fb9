package register

import (
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"
)

// largeColumns are those of a table with slings and shackles in turn.
const largeColumns = `
liftlint: 1
title: Large loft
decimal: comma
dates: day_first
columns:
  - {head: No., field: number}
  - {head: Type, field: kind, words: [{says: Sling, means: wire_rope_sling}, {says: Shackle, means: shackle}]}
  - {head: Serial, field: serial}
  - {head: Maker, field: maker}
  - {head: RL, field: rated_load, unit: t}
  - {head: Rope, field: diameter, unit: mm}
  - {head: Length, field: length, unit: m}
  - {head: Cert., field: certificate.number}
  - {head: Cert. day, field: certificate.date}
  - {head: Rack, field: location}
  - {head: Status, field: status}
  - {head: Insp., field: inspections.date}
  - {head: Sort, field: inspections.kind}
  - {head: By, field: inspections.inspector}
  - {head: Result, field: inspections.outcome}
  - {head: Due, field: inspections.next_due}
  - {head: Broken wires, field: inspections.found.broken_wires_in_one_lay}
  - {head: Color, keep: true}
`

// large makes a table of so many rows.
func large(rows int) string {
	var b strings.Builder
	b.WriteString("No.;Type;Serial;Maker;RL;Rope;Length;Cert.;Cert. day;Rack;Status;Insp.;Sort;By;Result;Due;Broken wires;Color\n")
	for i := range rows {
		d := time.Date(2024, 1, 1+i%700, 0, 0, 0, 0, time.UTC)
		kind, rope, length, wires := "Sling", fmt.Sprint(10+i%40), fmt.Sprintf("%d,%02d", 1+i%20, i%100), fmt.Sprint(i%6)
		if i%2 == 1 {
			kind, rope, length, wires = "Shackle", "", "", ""
		}
		fmt.Fprintf(&b, "G-%06d;%s;S%07d;Maker %c;%d,%d;%s;%s;C-%d;%s;loft, rack %d;in service;%s;periodic;Q. Example;passed;%s;%s;green\n",
			i, kind, i, 'A'+rune(i%7), 1+i%30, i%10, rope, length, i, d.Format("2.1.2006"), i%60, d.AddDate(0, 6, 0).Format("02.01.2006"), d.AddDate(1, 6, 0).Format("02.01.2006"), wires)
	}
	return b.String()
}

func mustColumns(t testing.TB, text string) *Columns {
	t.Helper()
	c, err := ReadColumns("gear.columns.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// BenchmarkTable reads a table of 100,000 items. Aim: under 2 s on two cores,
// under 500 MB.
//
//	2026-11-27  1.05 s (3.0 s with five other jobs on the machine), 0.91 GB and
//	            8.9 million allocations in all; a process that reads it and
//	            prints one item: 2.6 s of both cores' time, 400 to 430 MB
//	            resident (two shared, busy cores). Whole schemas for each row
//	            took twice the time, new nodes for each row half as much memory
//	            again.
func BenchmarkTable(b *testing.B) {
	src := []byte(large(100_000))
	columns := mustColumns(b, largeColumns)
	b.SetBytes(int64(len(src)))
	b.ReportAllocs()
	for b.Loop() {
		t, err := mustReader(b).ReadTable("gear.csv", src, columns)
		if err != nil {
			b.Fatal(err)
		}
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		b.ReportMetric(float64(m.Sys)/1e6, "MB-sys")
		runtime.KeepAlive(t)
	}
}

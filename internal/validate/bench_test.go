package validate

import "testing"

const fourLegs = "testdata/valid/four_legs.yaml"

// Compiling the schema of a plan and of all kinds in use, then validating.
// Aim: under 6 ms.
//
//	2026-11-25  2.8 to 4.1 ms, 1.9 MB, 27,900 allocations (two shared cores)
//	2026-11-27  8.1 ms beside 6.6 ms without beams, hooks and phases in the
//	            same hour, 3.8 MB, 52,400 allocations (two shared, busy cores)
func BenchmarkFirst(b *testing.B) {
	doc := mustRead(b, mustReadFile(b, fourLegs))
	b.ReportAllocs()
	for b.Loop() {
		mustNew(b).Plan(doc)
	}
}

// A plan of 70 lines with everything compiled. Aim: under 0.5 ms.
//
//	2026-11-25  0.12 to 0.16 ms, 91 kB, 1,840 allocations (two shared cores)
func BenchmarkLater(b *testing.B) {
	doc := mustRead(b, mustReadFile(b, fourLegs))
	v := mustNew(b)
	v.Plan(doc)
	b.ReportAllocs()
	for b.Loop() {
		v.Plan(doc)
	}
}

// All that is wrong with a plan with six faults, worded.
//
//	2026-11-25  0.08 ms, 36 kB, 920 allocations (two shared cores)
func BenchmarkFaulty(b *testing.B) {
	doc := mustRead(b, mustReadFile(b, "testdata/faulty/several.yaml"))
	v := mustNew(b)
	b.ReportAllocs()
	for b.Loop() {
		v.Plan(doc)
	}
}

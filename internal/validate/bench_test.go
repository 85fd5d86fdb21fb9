package validate

import "testing"

const fourLegs = "testdata/valid/four_legs.yaml"

func BenchmarkFirst(b *testing.B) {
	doc := mustRead(b, mustReadFile(b, fourLegs))
	b.ReportAllocs()
	for b.Loop() {
		mustNew(b).Plan(doc)
	}
}

func BenchmarkLater(b *testing.B) {
	doc := mustRead(b, mustReadFile(b, fourLegs))
	v := mustNew(b)
	v.Plan(doc)
	b.ReportAllocs()
	for b.Loop() {
		v.Plan(doc)
	}
}

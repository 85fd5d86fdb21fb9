package policy_test

import (
	"context"
	"fmt"
	"io/fs"
	"strings"
	"testing"

	"liftlint/internal/policy"
	"liftlint/policies"
)

// 2026-11-25: 6.0 ms for 10 rules, 3.0 MB, 49k allocations, on two shared
// cores. Before draft-07 schemas, whose own schema is lighter: 9.2 ms.
func BenchmarkLoad(b *testing.B) {
	o := policy.Options{Sources: sources(), Profile: profile(b, "us")}
	for b.Loop() {
		if _, err := policy.Load(context.Background(), o); err != nil {
			b.Fatal(err)
		}
	}
}

// many is the built-in rules, copied until there are 110.
func many(b *testing.B) policy.Options {
	files := map[string]string{}
	for i := range 11 {
		for _, r := range builtin(b, "us").Rules() {
			text, err := fs.ReadFile(policies.Rules(), r.ID+"/rule.rego")
			if err != nil {
				b.Fatal(err)
			}
			id := fmt.Sprintf("%s_%d", r.ID, i)
			from, to := strings.ReplaceAll(r.ID, "/", "."), strings.ReplaceAll(id, "/", ".")
			names := strings.NewReplacer("rules."+from, "rules."+to, "params."+from, "params."+to)
			files[id+"/rule.rego"] = names.Replace(string(text))
		}
	}
	return policy.Options{Sources: folder(files), Profile: policy.Profile{Name: "us"}}
}

// 2026-11-25: 45 ms, 24 MB.
func BenchmarkLoad110(b *testing.B) {
	o := many(b)
	for b.Loop() {
		if _, err := policy.Load(context.Background(), o); err != nil {
			b.Fatal(err)
		}
	}
}

// 2026-11-25: 1.5 ms for a lift of four legs, 460 KB.
func BenchmarkJudge110(b *testing.B) {
	p, err := policy.Load(context.Background(), many(b))
	if err != nil {
		b.Fatal(err)
	}
	d := level()
	for b.Loop() {
		if _, err := p.Judge(context.Background(), d); err != nil {
			b.Fatal(err)
		}
	}
}

// 2026-11-25: 0.9 ms, most of it the compiling of the schema.
func BenchmarkLoadProfile(b *testing.B) {
	for b.Loop() {
		profile(b, "us")
	}
}

// 2026-11-25: 0.2 ms for 10 rules and a lift of four legs, 87 KB.
func BenchmarkJudge(b *testing.B) {
	p, d := builtin(b, "us"), level()
	for b.Loop() {
		if _, err := p.Judge(context.Background(), d); err != nil {
			b.Fatal(err)
		}
	}
}

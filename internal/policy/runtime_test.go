package policy

import (
	"context"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"liftlint/internal/facts"
)

// packOf compiles modules without any of the checks of Load, to see that what
// slips through them fails the run and never passes in silence.
func packOf(t *testing.T, rules []*Rule, modules ...string) *Pack {
	t.Helper()
	parsed := map[string]*ast.Module{}
	for _, text := range modules {
		m, err := ast.ParseModuleWithOpts("m", text, ast.ParserOptions{RegoVersion: ast.RegoV1})
		if err != nil {
			t.Fatal(err)
		}
		parsed[m.Package.Path.String()] = m
	}
	c := ast.NewCompiler()
	c.Compile(parsed)
	if c.Failed() {
		t.Fatal(c.Errors)
	}
	q, err := prepare(context.Background(), c, allFindings)
	if err != nil {
		t.Fatal(err)
	}
	return &Pack{rules: rules, compiler: c, query: q, active: len(rules), deadline: DefaultDeadline}
}

func twoLegs() *facts.Document {
	slack := true
	leg := func(key string) facts.Leg {
		return facts.Leg{Record: facts.Record{Key: key, At: "#/" + key}, Slack: &slack}
	}
	return &facts.Document{
		Lifts: []facts.Lift{{Record: facts.Record{Key: "lift"}, Stage: Review}},
		Legs:  []facts.Leg{leg("leg/1"), leg("leg/2")},
	}
}

func TestWhatARuleGivesBackIsChecked(t *testing.T) {
	graded := []Grade{{Name: "bad"}, {Name: "worse"}}
	for _, c := range []struct {
		name, finding string
		grades        []Grade
		want          string
	}{
		{"no such record", `finding contains "leg/3"`, nil, `rule a/b found "leg/3", which is no record of legs that it judges`},
		{"another sort", `finding contains 3`, nil, "rule a/b found 3: an element is a record's key"},
		{"another entry", `finding contains {"key": "leg/1", "place": "x"}`, nil, "rule a/b found map[key:leg/1 place:x]: an element is"},
		{"no key", `finding contains {"names": ["x"]}`, nil, "rule a/b found map[names:[x]]: an element is"},
		{"names that are none", `finding contains {"key": "leg/1", "names": [3]}`, nil, "rule a/b found map[key:leg/1 names:[3]]: an element is"},
		{"no grade", `finding contains "leg/1"`, graded, `rule a/b gave the grade "", which its METADATA does not list`},
		{"another grade", `finding contains {"key": "leg/1", "grade": "wors"}`, graded, `rule a/b gave the grade "wors", which its METADATA does not list: did you mean "worse"?`},
		{"no set", `finding := 3`, nil, "rule a/b answered with a number, not with a set"},
		{"no answer", `finding := x if { x := 3; x > 4 }`, nil, "rule a/b did not answer"},
		{"a built-in that fails", `finding contains "leg/1" if 1 / (count(input.legs) - 2) == 3`, nil, "rule a/b (a.rego): "},
		{"two values", `finding := x if { some x in [1, 2] }`, nil, "rule a/b (a.rego): "},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := packOf(t, []*Rule{{ID: "a/b", Over: "legs", File: "a.rego", Grades: c.grades}}, "package liftlint.rules.a.b\n"+c.finding)
			v, err := p.Judge(context.Background(), twoLegs())
			if err == nil || !strings.HasPrefix(err.Error(), c.want) || v != nil {
				t.Errorf("got  %v, %v\nwant %s", v, err, c.want)
			}
		})
	}
}

func TestAnAnswerTooManyOrTooFew(t *testing.T) {
	rule := func(id string) *Rule { return &Rule{ID: id, Over: "legs"} }
	const one, two = "package liftlint.rules.a.b\nfinding contains 1 if false", "package liftlint.rules.a.c\nfinding contains 1 if false"
	if _, err := packOf(t, []*Rule{rule("a/b"), rule("a/c")}, one).Judge(context.Background(), twoLegs()); err == nil || err.Error() != "rule a/c did not answer" {
		t.Errorf("got %v", err)
	}
	if _, err := packOf(t, []*Rule{rule("a/b")}, one, two).Judge(context.Background(), twoLegs()); err == nil || err.Error() != "2 rules answered, of 1" {
		t.Errorf("got %v", err)
	}
}

func TestWorstGradeAndAllNames(t *testing.T) {
	r := &Rule{ID: "a/b", Over: "legs", File: "a.rego", Grades: []Grade{{Name: "worse"}, {Name: "bad"}}, message: template{{name: namesName}}}
	p := packOf(t, []*Rule{r}, `package liftlint.rules.a.b
finding contains {"key": "leg/1", "grade": "bad", "names": ["x"]}
finding contains {"key": "leg/1", "grade": "worse", "names": {"rated_load"}}
finding contains {"key": "leg/1", "grade": "worse", "names": ["maker", "rated_load"]}
finding contains {"key": "leg/2", "grade": "bad", "names": ["z", "a"]}`)
	v, err := p.Judge(context.Background(), twoLegs())
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"worse: maker, rated load", "bad: z, a"} {
		o := v[0].Outcomes[i]
		if got := o.Grade.Name + ": " + r.Message(o, nil); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// Whether a record is judged at all hangs on a fact that is absent: then it is
// not judged, whatever the rule's text says.
func TestUnknownSubjectsAreNotJudged(t *testing.T) {
	r := &Rule{ID: "a/b", Over: "legs", Needs: []string{"slack"}, Where: []Condition{{Field: "slack", Values: []any{true}}}}
	d := twoLegs()
	d.Legs[1].Slack = nil
	v, err := packOf(t, []*Rule{r}, "package liftlint.rules.a.b\nfinding contains x.key if some x in input.legs").Judge(context.Background(), d)
	if err != nil {
		t.Fatal(err)
	}
	if o := v[0].Outcomes; o[0].State != Broken || o[1].State != NotJudged || len(o[1].Missing) != 1 {
		t.Errorf("%+v", o)
	}
}

func TestAPanicOfTheEvaluationIsAnError(t *testing.T) {
	p := packOf(t, nil, "package liftlint.rules.a.b\nfinding contains 1 if input.x > 0")
	if _, err := p.eval(context.Background(), rego.PreparedEvalQuery{}, nil); err == nil {
		t.Error("an empty query answered")
	}
}

// What the sandbox leaves out is unknown to parser and compiler.
func TestSandbox(t *testing.T) {
	caps := sandbox()
	if caps.AllowNet == nil || len(caps.AllowNet) != 0 {
		t.Error("a nil AllowNet allows every host")
	}
	if len(caps.Builtins) != len(builtinNames()) {
		t.Errorf("%d built-ins, %d named", len(caps.Builtins), len(builtinNames()))
	}
	for _, call := range []string{
		`http.send({"method": "get", "url": "http://localhost"})`, "time.now_ns()", "opa.runtime()", `rand.intn("x", 3)`,
		`net.lookup_ip_addr("localhost")`, "numbers.range(1, 1000000000)", `sprintf("%d", [1])`, `concat("", ["a"])`,
		`replace("a", "a", "b")`, `uuid.rfc4122("x")`, `io.jwt.decode("x")`, `trace("x")`, `print("x")`, `regex.match("a", "b")`,
	} {
		m, err := ast.ParseModuleWithOpts("m", "package m\nx := y if y := "+call, ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: caps})
		if err != nil {
			continue
		}
		c := newCompiler(caps, nil)
		if c.Compile(map[string]*ast.Module{"m": m}); !c.Failed() {
			t.Errorf("%s compiles", call)
		}
	}
}

// OPA's own type checker stands behind the checks of this package.
func TestInputIsTyped(t *testing.T) {
	for _, body := range []string{"leg.angel_deg < 3", "not leg.slak", "count([1 | leg.lenght_m > 3]) > 0"} {
		m, err := ast.ParseModuleWithOpts("m", "package m\nx contains leg.key if { some leg in input.legs; "+body+" }", ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: sandbox()})
		if err != nil {
			t.Fatal(err)
		}
		c := newCompiler(sandbox(), newShape().root)
		if c.Compile(map[string]*ast.Module{"m": m}); !c.Failed() {
			t.Errorf("%s compiles", body)
		}
	}
}

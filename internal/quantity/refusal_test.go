package quantity

import (
	"errors"
	"os"
	"strconv"
	"strings"
	"testing"
)

// Each line of the file is a kind, the text in Go quotes, and the whole
// message. The messages are the interface: read a new one aloud.
func TestRefusals(t *testing.T) {
	data, err := os.ReadFile("testdata/refusals.txt")
	if err != nil {
		t.Fatal(err)
	}
	count := 0
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSuffix(line, "\n")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		part := strings.SplitN(line, "\t", 3)
		if len(part) != 3 {
			t.Fatalf("line %q does not have three fields", line)
		}
		checkRefusal(t, part[0], part[1], part[2])
		count++
	}
	if count < 80 {
		t.Errorf("only %d refusals", count)
	}
}

func checkRefusal(t *testing.T, kind, quoted, want string) {
	t.Helper()
	k, err := ParseKind(kind)
	if err != nil {
		t.Fatal(err)
	}
	text, err := strconv.Unquote(quoted)
	if err != nil {
		t.Fatalf("%s: %v", quoted, err)
	}
	got := k.Check(text)
	if got == nil {
		t.Errorf("%s %s is read; want %s", kind, quoted, want)
		return
	}
	if got.Error() != want {
		t.Errorf("%s %s\n got %s\nwant %s", kind, quoted, got, want)
	}
	checkError(t, k, text, got)
}

// checkError holds for every error: its parts are there, and what it tells to
// write is read.
func checkError(t *testing.T, k Kind, text string, err error) {
	t.Helper()
	var e *Error
	if !errors.As(err, &e) {
		t.Fatalf("%q: %T is not an *Error", text, err)
	}
	if e.Input != text || e.Kind != k || e.Problem == "" || e.Allowed == "" {
		t.Errorf("%q: parts are missing in %+v", text, *e)
	}
	for _, told := range []string{e.Fix, e.Example} {
		if told == "" {
			continue
		}
		if err := k.Check(told); err != nil {
			t.Errorf("%q tells to write %q, which is refused: %v", text, told, err)
		}
	}
	if strings.ContainsAny(e.Error(), "\n\r\t") || strings.Count(e.Error(), "`")%2 != 0 {
		t.Errorf("%q: the message is not one plain line: %q", text, e.Error())
	}
}

// Both readings of an ambiguous comma have to be in the message, and no fix.
func TestAmbiguousHasNoFix(t *testing.T) {
	for _, text := range []string{"1,500 kg", "3 ton", "3 T", "3 tons"} {
		var e *Error
		if _, err := ParseMass(text); !errors.As(err, &e) || e.Fix != "" {
			t.Errorf("%q: got %+v", text, e)
		}
	}
}

func TestSigns(t *testing.T) {
	for _, c := range []struct {
		text string
		sign Sign
		want string
	}{
		{"-3 m", AnySign, ""},
		{"0 m", NotNegative, ""},
		{"3 m", Positive, ""},
		{"-3 m", NotNegative, "`-3 m` is negative; zero or more is asked for, such as `4.2 m`"},
		{"-3 m", Positive, "`-3 m` is negative; more than zero is asked for, such as `4.2 m`"},
		{"0 m", Positive, "`0 m` is zero; more than zero is asked for, such as `4.2 m`"},
		{"3 kg", Positive, "`3 kg` is a mass; a length is asked for, such as `4.2 m`"},
		{"3 m", Sign(9), "`3 m` cannot be checked for its sign; the sign asked for is unknown"},
	} {
		got := ""
		if err := KindLength.CheckSign(c.text, c.sign); err != nil {
			got = err.Error()
		}
		if got != c.want {
			t.Errorf("%q %v: got %q, want %q", c.text, c.sign, got, c.want)
		}
	}
}

package yamldoc

import (
	"errors"
	"testing"
)

// A tree that the second reading does not find is refused.
func TestSecondReadingRefusesOtherTrees(t *testing.T) {
	const src = "a: 1\nb: [x, {c: w}]\nd:\n  e: z\n"
	tokens := scan(src, &faultList{}).tokens
	for name, change := range map[string]func(*Node){
		"none":            func(*Node) {},
		"entry lost":      func(n *Node) { n.Entries = n.Entries[:2] },
		"item lost":       func(n *Node) { n.Entries[1].Value.Items = n.Entries[1].Value.Items[:1] },
		"kind":            func(n *Node) { n.Entries[0].Value.Kind = Mapping },
		"style":           func(n *Node) { n.Entries[2].Value.Style = FlowStyle },
		"mapping as text": func(n *Node) { n.Entries[2].Value.Kind = String },
	} {
		faults := &faultList{}
		root := compose(tokens, faults).root
		change(root)
		readAgain(src, tokens, root, faults)
		if got := len(faults.all); (name == "none") != (got == 0) {
			t.Errorf("%s: %d faults", name, got)
		}
	}
}

// A scalar that ends elsewhere in the second reading is refused at its line.
func TestSecondReadingComparesTexts(t *testing.T) {
	faults := &faultList{}
	tokens := scan("a: 1\nb: x y\n", faults).tokens
	tokens[len(tokens)-1].text = "x"
	root := compose(tokens, faults).root
	readAgain("a: 1\nb: x y\n", tokens, root, faults)
	if len(faults.all) != 1 || faults.all[0].ID != Syntax || faults.all[0].Range.From.Line != 2 {
		t.Errorf("%+v", faults.all)
	}
}

func TestSecondReadingErrors(t *testing.T) {
	root := &Node{Kind: Mapping, Style: BlockStyle}
	if line, ok := agrees("a: 1\nb: [\n", nil, root); ok || line != 2 {
		t.Error("a text that does not parse agrees", line)
	}
	if _, ok := agrees("a: 1\n", nil, nil); ok {
		t.Error("a panic counts as agreement")
	}
	if errorLine(errors.New("other")) != 1 {
		t.Error("an unknown error has no first line")
	}
}

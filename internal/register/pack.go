package register

import (
	"encoding/binary"
	"strconv"

	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// packed is what a plan says of an item, as it is written in its file, without
// id and kind: a tree of values in one text, which takes a small part of the
// memory that nodes do.
type packed string

// pack packs the entries of an item's gear.
func pack(gear *yamldoc.Node) packed {
	var kept []yamldoc.Entry
	for _, e := range gear.Entries {
		if e.Key != "id" && e.Key != "kind" {
			kept = append(kept, e)
		}
	}
	return packed(packNode(nil, &yamldoc.Node{Kind: yamldoc.Mapping, Entries: kept}))
}

func packNode(b []byte, n *yamldoc.Node) []byte {
	b = append(b, byte(n.Kind))
	switch n.Kind {
	case yamldoc.Mapping:
		b = binary.AppendUvarint(b, uint64(len(n.Entries)))
		for _, e := range n.Entries {
			b = packNode(packText(b, e.Key), e.Value)
		}
	case yamldoc.Sequence:
		b = binary.AppendUvarint(b, uint64(len(n.Items)))
		for _, i := range n.Items {
			b = packNode(b, i)
		}
	default:
		b = packText(b, n.Text)
	}
	return b
}

func packText(b []byte, text string) []byte {
	return append(binary.AppendUvarint(b, uint64(len(text))), text...)
}

// Entry is what a plan would say of the item, as a tree of values with the
// pointers of an entry at the one given. All of it stands at one place: that
// where the plan names the item. Numbers in it that name members of a bridle
// are those of the register.
func (i *Item) Entry(id *yamldoc.Node, pointer string, at source.Place) *yamldoc.Node {
	u := unpacker{rest: string(i.said), at: at}
	n := u.node(pointer)
	names := []yamldoc.Entry{
		{Key: "id", KeyRange: at.Value, Value: id},
		{Key: "kind", KeyRange: at.Value, Value: yamldoc.Text(string(i.Gear.Base().Kind), pointer+"/kind", at)},
	}
	n.Entries = append(names, n.Entries...)
	return n
}

type unpacker struct {
	rest string
	at   source.Place
}

func (u *unpacker) node(pointer string) *yamldoc.Node {
	kind := yamldoc.Kind(u.rest[0])
	u.rest = u.rest[1:]
	switch kind {
	case yamldoc.Mapping:
		n := u.group(kind, pointer)
		for range u.count() {
			key := u.text()
			n.Entries = append(n.Entries, yamldoc.Entry{Key: key, KeyRange: u.at.Value, Value: u.node(pointer + "/" + key)})
		}
		return n
	case yamldoc.Sequence:
		n := u.group(kind, pointer)
		for i := range u.count() {
			n.Items = append(n.Items, u.node(pointer+"/"+strconv.Itoa(i)))
		}
		return n
	case yamldoc.String:
		return yamldoc.Text(u.text(), pointer, u.at)
	}
	return yamldoc.Plain(u.text(), pointer, u.at)
}

func (u *unpacker) group(kind yamldoc.Kind, pointer string) *yamldoc.Node {
	return &yamldoc.Node{Kind: kind, Style: yamldoc.FlowStyle, Pointer: pointer, Place: u.at}
}

func (u *unpacker) count() int {
	v, n := binary.Uvarint([]byte(u.rest[:min(len(u.rest), binary.MaxVarintLen64)]))
	u.rest = u.rest[n:]
	return int(v)
}

func (u *unpacker) text() string {
	n := u.count()
	text := u.rest[:n]
	u.rest = u.rest[n:]
	return text
}

package register

import (
	"strconv"
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// Register is the gear of one file, or of several read together.
type Register struct {
	Files []File
	Items []Item // in the order of the files

	byNumber map[string]int32
}

// File is one file of a register.
type File struct {
	Name  string
	Title string
	Site  string
}

// Find gives the item with a number, at the same cost however many there are.
func (r *Register) Find(number string) (*Item, bool) {
	i, ok := r.byNumber[number]
	if !ok {
		return nil, false
	}
	return &r.Items[i], true
}

// Item is one sling or fitting on file. What the register does not say is empty
// or nil.
type Item struct {
	Number string
	// Gear is what a plan would say of it; its id is the number. The links and
	// legs of a bridle are in Members, and gear.Bridle is not linked.
	Gear    gear.Item
	Members *Members

	Serial string
	Maker  string
	// RatedLoad is that on file: of gear that is marked with its rated load that
	// load, of others what the register says beside the tag.
	RatedLoad    *quantity.Load
	Certificate  *Certificate
	Status       Status
	Since        *time.Time
	Why          string
	Bought       *time.Time
	Location     string
	Overloaded   *Overload
	HistoryKnown *bool
	Inspections  []Inspection // in the order of the file
	Kept         []Kept

	at     at
	said   packed
	values *yamldoc.Node
}

// Status says whether an item may be used. Empty: the register does not say.
type Status string

// The statuses.
const (
	InService    Status = "in_service"
	Quarantined  Status = "quarantined"
	OutOfService Status = "out_of_service"
	Scrapped     Status = "scrapped"
)

// Members are what a bridle is made of, by their numbers.
type Members struct {
	Master string
	Groups []Group
}

// Member is something that a bridle is made of, and where the bridle names it.
type Member struct{ What, Number, Pointer string }

// All lists what a bridle is made of, from the top down; nothing of what is no bridle.
func (m *Members) All() []Member {
	if m == nil {
		return nil
	}
	list := []Member{{"master link", m.Master, "/master"}}
	for g, group := range m.Groups {
		at := "/groups/" + strconv.Itoa(g)
		if group.Link != "" {
			list = append(list, Member{"intermediate link", group.Link, at + "/link"})
		}
		for l, leg := range group.Legs {
			list = append(list, Member{"leg", leg, at + "/legs/" + strconv.Itoa(l)})
		}
	}
	return list
}

// Group are the legs of a bridle that hang from one place; Link is empty where
// that is the master link.
type Group struct {
	Link string
	Legs []string
}

// Certificate is what came with the item from its maker or tester.
type Certificate struct {
	Number    string
	Date      *time.Time
	By        string
	RatedLoad *quantity.Load
	ProofLoad *quantity.Load
	Serial    string
}

// Overload is an overload or shock load on record.
type Overload struct {
	Date      time.Time
	ClearedBy string
	ClearedOn *time.Time
}

// Kept is a cell of a table that has no field.
type Kept struct{ Head, Value string }

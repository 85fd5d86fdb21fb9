package plan

import (
	"time"

	"liftlint/internal/yamldoc"
)

// Waiver says that one finding is accepted: by whom, why and until when. It
// speaks of what is found in the plan and changes nothing about the lift.
type Waiver struct {
	Pointer    string
	Rule       string // id of the rule
	Subject    string // key of the record, as reports print it
	Reason     string
	By         string // who asks for it
	ApprovedBy string
	Until      time.Time // the last day it holds
	Grade      string    // the grade accepted; empty for rules without grades
	Measured   string    // the figure accepted, as reports print it; empty where any will do
	Limit      string    // the limit that it was accepted against
}

// Waivers reads those of a document that has passed its schemas, in the order of
// the plan. The error says that the schemas let something through that can't be
// read.
func Waivers(doc *yamldoc.Document) ([]Waiver, error) {
	var err error
	var list []Waiver
	for _, f := range (fields{doc.Root(), &err}).of("waivers").items() {
		list = append(list, Waiver{
			Pointer:    f.pointer(),
			Rule:       f.text("rule"),
			Subject:    f.text("subject"),
			Reason:     f.text("reason"),
			By:         f.text("by"),
			ApprovedBy: f.text("approved_by"),
			Until:      *orZero(f.day("until")),
			Grade:      f.text("grade"),
			Measured:   f.text("measured"),
			Limit:      f.text("limit"),
		})
	}
	return list, err
}

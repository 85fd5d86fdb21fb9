package plan

import (
	"liftlint/internal/gear"
	"liftlint/internal/yamldoc"
)

// DecodeItem reads one item of gear that stands outside a plan and has passed
// the schema of its kind. A bridle's members are not linked, and the points of
// a beam are left to the plan. The error is a fault of the tool, as in Decode.
func DecodeItem(n *yamldoc.Node) (gear.Item, error) {
	var err error
	item := decodeItem(fields{n, &err})
	return item, err
}

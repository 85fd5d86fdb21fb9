package remedy

import (
	"fmt"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// thickerRope names the least diameter that is asked for, as it is written in
// the limit.
func (m *Mender) thickerRope(a ask) (string, bool) {
	if a.limit <= 0 {
		return "", false
	}
	return fmt.Sprintf("a sling of rope of at least %s", quantity.Length(a.limit).Format(m.units)), true
}

// longerBody is what the body lacks, as a length: the diameters that are
// missing times the diameter. A body without any plain rope may lack more than
// that, and one whose splices are not given has no exact figure.
func (m *Mender) longerBody(a ask) (string, bool) {
	clear, known := a.number("clear_rope_d")
	diameter, sized := a.number("diameter_m")
	exact, _ := a.subject.Field("splices_given")
	if !known || !sized || exact != true || clear <= 0 || a.limit <= clear {
		return "", false
	}
	return fmt.Sprintf("a sling that is at least %s longer with such eyes and splices, or one with shorter eyes", m.upwards((a.limit-clear)*diameter)), true
}

// believableTag names what a sling of such rope can be rated for where its tag
// shows more: the load on the tag over the ratio that was found.
func (m *Mender) believableTag(a ask) (string, bool) {
	ratio, ok := a.number(a.measured)
	id, named := a.subject.Field("id")
	if !ok || !named || m.plan == nil || ratio <= 0 {
		return "", false
	}
	for _, item := range m.plan.Gear {
		if load, _ := tagged(item); load != nil && item.Base().ID == id {
			return fmt.Sprintf("compare the tag with the certificate: by its rope the tag would show about %s, and it shows %s",
				m.ratedText(load.Newtons/ratio, downTo), m.ratedText(load.Newtons, downTo)), true
		}
	}
	return "", false
}

// tagged is the load on the tag of a sling or bridle.
func tagged(item gear.Item) (*quantity.Load, string) {
	switch item.Base().Kind {
	case gear.WireRopeSlingKind, gear.BridleKind:
		return item.Rating()
	}
	return nil, ""
}

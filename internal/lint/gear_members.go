package lint

import (
	"fmt"
	"strconv"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/register"
)

// memberOut is the check that tells of a bridle in service with a part that is not.
const memberOut = "register/member_not_in_service"

// addMembersOut tells of each bridle among items that may be used while something that
// it is made of may not.
func (r *Result) addMembersOut(items []*register.Item) {
	index := map[string]int{}
	for i, item := range items {
		index[item.Number] = i
	}
	for i, b := range items {
		if b.Members == nil || !usable(b) {
			continue
		}
		for _, m := range membersOf(b) {
			k, ok := index[m.number]
			if !ok || usable(items[k]) {
				continue
			}
			message := fmt.Sprintf("bridle %s may be used by the register, and its %s %s is %s: take the bridle out of service until it is whole, inspected and tagged again",
				b.Number, m.what, m.number, strings.ReplaceAll(string(items[k].Status), "_", " "))
			there := finding.Related{Caption: "what the register says of " + m.number, Place: r.locate("#/gear/" + strconv.Itoa(k) + "/status")}
			r.addBuiltin(memberOut, message, "gear/"+b.Number, r.locate("#/gear/"+strconv.Itoa(i)+m.pointer), []finding.Related{there})
		}
	}
}

// member is one part of a bridle, and where the bridle names it.
type member struct{ what, number, pointer string }

func membersOf(b *register.Item) []member {
	list := []member{{"master link", b.Members.Master, "/master"}}
	for g, group := range b.Members.Groups {
		at := "/groups/" + strconv.Itoa(g)
		if group.Link != "" {
			list = append(list, member{"intermediate link", group.Link, at + "/link"})
		}
		for l, leg := range group.Legs {
			list = append(list, member{"leg", leg, at + "/legs/" + strconv.Itoa(l)})
		}
	}
	return list
}

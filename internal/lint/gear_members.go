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
		if !usable(b) {
			continue
		}
		for _, m := range b.Members.All() {
			k, ok := index[m.Number]
			if !ok || usable(items[k]) {
				continue
			}
			message := fmt.Sprintf("bridle %s may be used by the register, and its %s %s is %s: take the bridle out of service until it is whole, inspected and tagged again",
				b.Number, m.What, m.Number, strings.ReplaceAll(string(items[k].Status), "_", " "))
			there := finding.Related{Caption: "what the register says of " + m.Number, Place: r.locate("#/gear/" + strconv.Itoa(k) + "/status")}
			r.addBuiltin(memberOut, message, "gear/"+b.Number, r.locate("#/gear/"+strconv.Itoa(i)+m.Pointer), []finding.Related{there})
		}
	}
}

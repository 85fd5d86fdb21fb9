package remedy

import "fmt"

// inspectionDue names the day the inspection was due and the day it is needed
// for.
func (m *Mender) inspectionDue(a ask) (string, bool) {
	due, ok := a.subject.Field("inspection.due")
	if !ok {
		return "", false
	}
	id, _ := a.subject.Field("id")
	return fmt.Sprintf("have %v inspected before the lift, or use another; the inspection was due on %v", id, due), true
}

package remedy

import "fmt"

// inspectionDue says what to do about an inspection that has run out; the day
// on which it did tells how far back to look for a newer report.
func (m *Mender) inspectionDue(a ask) (string, bool) {
	due, ok := a.subject.Field("inspection.due")
	if !ok {
		return "", false
	}
	id, _ := a.subject.Field("id")
	return fmt.Sprintf("have %v inspected before the lift, or use another; the inspection was due on %v", id, due), true
}

package sarif

import (
	"fmt"
	"slices"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
)

// The kinds of notifications, by their index in the driver.
const (
	couldNotCheck = iota
	setting
	leftOut
)

func notifications() []descriptor {
	return []descriptor{
		{ID: "could_not_check", ShortDescription: &text{Text: "Something could not be checked, and no result speaks for it."}},
		{ID: "setting", ShortDescription: &text{Text: "A configuration sets a rule otherwise than the profile and the rule do."}},
		{ID: "left_out", ShortDescription: &text{Text: "The run is over a change, and something was left out of it: results of these files that were there before are not gone."}},
	}
}

func kindOf(index int) descriptorLink {
	return descriptorLink{ID: notifications()[index].ID, Index: index}
}

// invocation tells what the run came to, what could not be checked at all, and
// what configurations changed.
func (c *catalog) invocation(r report.Run) invocation {
	v := invocation{
		ExecutionSuccessful: r.Exit() != report.Unchecked,
		ExitCode:            int(r.Exit()),
		ExitCodeDescription: r.Meaning(),
	}
	for _, f := range r.Failures {
		v.ToolExecutionNotifications = append(v.ToolExecutionNotifications, failed(report.OneLine(f)))
	}
	var settings []policy.Override
	for _, x := range r.Results {
		if !report.Understood(x) {
			n := failed(x.File + " was not checked: " + unchecked(x))
			n.Locations = []location{{PhysicalLocation: physical{ArtifactLocation: file(x.File)}}}
			v.ToolExecutionNotifications = append(v.ToolExecutionNotifications, n)
		}
		if why := report.DayMissing(x); why != "" {
			n := failed(x.File + ": " + why)
			n.Locations = []location{{PhysicalLocation: physical{ArtifactLocation: file(x.File)}}}
			v.ToolExecutionNotifications = append(v.ToolExecutionNotifications, n)
		}
		for _, o := range x.Overrides {
			if !slices.Contains(settings, o) {
				settings = append(settings, o)
				v.ToolConfigurationNotes = append(v.ToolConfigurationNotes, c.setting(o))
			}
		}
	}
	for _, words := range r.LeftOut() {
		v.ToolExecutionNotifications = append(v.ToolExecutionNotifications, notification{Descriptor: kindOf(leftOut), Level: "note", Message: text{Text: message(words)}})
	}
	return v
}

func failed(what string) notification {
	return notification{Descriptor: kindOf(couldNotCheck), Level: "error", Message: text{Text: message(what)}}
}

func unchecked(x *lint.Result) string {
	if x.State == lint.Unread && len(x.Findings) > 0 {
		return x.Findings[0].Message
	}
	return "no rule was put to it"
}

func (c *catalog) setting(o policy.Override) notification {
	said := fmt.Sprintf("Set by %s: %s, %s: %s instead of %s.", o.From, o.Rule, o.What, o.Is, o.Was)
	n := notification{Descriptor: kindOf(setting), Level: "note", Message: text{Text: message(said)}}
	if _, ok := c.index[o.Rule]; ok {
		rule := c.link(o.Rule)
		n.AssociatedRule = &rule
	}
	return n
}

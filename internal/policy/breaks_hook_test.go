package policy_test

import "liftlint/internal/facts"

func breaksHook() []broken {
	return []broken{
		{"hook/pulled_aside", "far", func(d *facts.Document) { d.Hooks[tailHook].LeanDeg = ptr(4.0) },
			"hook tail in phase turning at 30 deg is pulled off plumb by <lean_from_plumb_deg 4>, <horizontal_n 900> to the side; up to <error_deg 3> is taken for plumb: what a crane stands to the side, its chart and maker say", "#/hook/1", 4},
		{"hook/pulled_aside", "somewhat", func(d *facts.Document) { d.Hooks[tailHook].LeanDeg = ptr(2.0) },
			"hook tail in phase turning at 30 deg is pulled off plumb by <lean_from_plumb_deg 2>, <horizontal_n 900> to the side; up to <warning_deg 1> is taken for plumb: what a crane stands to the side, its chart and maker say", "#/hook/1", 2},
	}
}

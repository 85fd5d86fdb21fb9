package plangen

// fitMistakes are parts that do not go over or into one another.
func fitMistakes() []mistake {
	point := func(p *plot) *entry { return p.attachments().below[0] }
	at := func(m mistake, id func(*plot) string) mistake {
		sow := m.sow
		m.sow = func(p *plot) *entry {
			sow(p)
			return p.item(id(p)).at("id")
		}
		return m
	}
	fitting := func(p *plot) string { return p.fittingID(0) }
	master := func(*plot) string { return "ML1" }
	upperEye := func(m mistake) mistake {
		sow := m.sow
		m.sow = func(p *plot) *entry {
			sow(p)
			return upper(p)
		}
		return m
	}
	pin := func(factor float64) func(*plot) float64 {
		return func(p *plot) float64 { return factor * p.low.throughM }
	}
	jaw := func(factor float64) func(*plot) float64 { return func(p *plot) float64 { return factor * p.low.openM } }
	hook := (*plot).hook
	return []mistake{
		at(put("a hole narrower than the pin", "fit/pin_in_hole", point, sized("hole", pin(0.8)), shackled), fitting),
		at(warns(put("a hole far wider than the pin", "fit/pin_in_hole", point, sized("hole", pin(1.5)), shackled, to("padeye"))), fitting),
		at(put("a plate thicker than the jaw", "fit/plate_in_jaw", point, sized("thickness", jaw(1.2)), shackled), fitting),
		at(warns(mistake{what: "a plate loose in the jaw", rule: "fit/plate_in_jaw", suits: all(shackled, to("padeye")), sow: func(p *plot) *entry {
			point(p).set(sized("thickness", jaw(0.4))(p))
			p.fitting().drop("spacers")
			return nil
		}}), fitting),
		at(put("a hole narrower than the hook", "fit/hook_in_hole", point, sized("hole", pin(0.8)), hooked), fitting),
		at(put("a ring thicker than the throat", "fit/hook_tip_loaded", point, sized("thickness", jaw(1.2)), hooked), fitting),
		at(put("a hook without a latch", "fit/hook_latch", (*plot).fitting, word("latch", "none"), hooked), fitting),
		at(warns(put("a hook that points inward", "fit/hook_points_inward", (*plot).fitting, word("points", "inward"), hooked)), fitting),
		put("a crane hook whose latch is faulty", "fit/hook_latch", hook, word("latch", "faulty")),
		put("a link too thick for the throat", "fit/hook_tip_loaded", hook, sized("throat", func(p *plot) float64 { return 0.8 * p.master.sectionM }), linked),
		put("two eyes crowded in a hook", "fit/crowded", hook, sized("throat", func(p *plot) float64 { return 1.6 * p.d() }), direct, soft, legs(2, 2)),
		at(put("a link too narrow for its legs", "fit/crowded", func(p *plot) *entry { return p.item("ML1") }, sized("inside_width", func(p *plot) float64 {
			return max(5*p.d(), 1.05*p.crane.widthM)
		}), linked, loose, legs(4, 4), thick), master),
		at(put("a hook too wide for the link", "fit/link_over_hook", hook, sized("body_width", func(p *plot) float64 { return 1.1 * p.master.widthM }), linked), master),
		upperEye(put("a hook wider than the eye", "fit/pin_over_eye_width", upper, sized("width", func(p *plot) float64 { return 0.8 * p.crane.widthM }), direct, soft)),
		upperEye(put("a hook thinner than the rope", "bend/eye_round_thin_body", hook, sized("body_width", func(p *plot) float64 { return 0.8 * p.d() }), direct, soft, legs(1, 1))),
	}
}

// soft says that the eyes over the crane hook have no thimbles.
func soft(s *sketch) bool { return !s.thimbled }

// thick says that four legs are wider, side by side, than the crane hook.
func thick(s *sketch) bool { return 1.05*s.crane.widthM < 5.5*s.d() }

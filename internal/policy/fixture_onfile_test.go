package policy_test

import "liftlint/internal/facts"

// The records of a level lift that registers tell of.
const beamOnFile = 1 // of items on file

// The signs of a level lift that rules are broken by, in their order.
const (
	kinkSign = iota
	laySign
	endSign
	wireSign
	throatSign
	twistSign
	stretchSign
	diameterSign
)

// onFileLevel gives a level lift gear from a register that meets every rule.
func onFileLevel(d *facts.Document) {
	sling := facts.OnFile{
		Record: facts.Record{Key: "on_file/S1", At: "loft.gear.yaml#/items/0"}, ID: "S1", Number: "WR-11", Named: "S1, item WR-11,", Kind: "wire_rope_sling", Uses: 1,
		Status: "in_service", Overload: "cleared", HistoryKnown: "yes", Inspected: true, ProofTested: "no",
		Newest: facts.LastOnRecord{At: "loft.gear.yaml#/items/0/inspections/0", Date: "2026-06-01", Outcome: "passed"},
		Failed: facts.FailedOnRecord{At: "loft.gear.yaml#/items/0/inspections/0", What: "none"},
		Repair: facts.RepairOnRecord{At: "loft.gear.yaml#/items/0/inspections/0", ProofTested: "none"},
	}
	beam := sling
	beam.Key, beam.At, beam.ID, beam.Number, beam.Kind = "on_file/SB1", "loft.gear.yaml#/items/1", "SB1", "BM-1", "spreader_beam"
	beam.ProofTested, beam.ProofRatio = "yes", ptr(1.25)
	d.OnFile = []facts.OnFile{sling, beam}
	d.Doubtful = []facts.Doubtful{{Record: facts.Record{Key: "doubtful/1/S1", At: "loft.gear.yaml#/items/0/inspections/1"}, ID: "S1", Uses: 1, Doubt: "none"}}
	add := func(what, named, kind string, set func(*facts.Sign)) {
		s := facts.Sign{
			Record: facts.Record{Key: "sign/S1/" + what + "/" + kind, At: "#/" + what}, ID: "S1", Kind: kind, Rope: "single_part", Uses: 1,
			What: what, Named: named, Date: "2026-06-01", WentBack: "no",
		}
		set(&s)
		d.Signs = append(d.Signs, s)
	}
	add("kink", "a kink", "wire_rope_sling", func(s *facts.Sign) { s.Seen = ptr(false) })
	add("broken_wires_in_one_lay", "broken wires in one lay", "wire_rope_sling", func(s *facts.Sign) { s.Count = ptr(2.0) })
	add("broken_wires_at_fitting", "broken wires at a sleeve or splice", "wire_rope_sling", func(s *facts.Sign) { s.Count = ptr(1.0) })
	add("outer_wire_wear", "wear of the outer wires", "wire_rope_sling", func(s *facts.Sign) { s.LostRatio = ptr(0.1) })
	add("throat_now", "opening of the throat", "hook", func(s *facts.Sign) { s.GrewRatio, s.GrewM = ptr(0.01), ptr(0.001) })
	add("twist", "twist", "hook", func(s *facts.Sign) { s.TwistDeg = ptr(0.0) })
	add("stretch", "stretch", "chain_sling", func(s *facts.Sign) { s.GrewRatio = ptr(0.002) })
	add("diameter_now", "loss of diameter", "wire_rope_sling", func(s *facts.Sign) { s.LostRatio = ptr(0.02) })
	add("wear", "wear", "hook", func(s *facts.Sign) { s.LostRatio = ptr(0.05) })
	add("stretch", "stretch", "master_link", func(s *facts.Sign) { s.GrewRatio = ptr(0.002) })
	add("length_now", "length", "web_sling", func(s *facts.Sign) { s.GrewRatio, s.GrewM = ptr(0.01), ptr(0.03) })
}

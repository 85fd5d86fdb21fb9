package liftlint.rules.hitch.choke_on_eye_or_splice_test

import data.liftlint.rules.hitch.choke_on_eye_or_splice.finding

grades(lands, round) := of("wire_rope_sling", lands, round)

of(kind, lands, round) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{
		"key": "hitch/hook/1",
		"kind": "choke",
		"sling_kind": kind,
		"choke_lands": lands,
		"perimeter_d": round,
	}]}
}

test_breaks_on_a_thin_body if grades("on_eye_or_splice", 21.9) == {"body_thin", "eye_long"}

test_breaks_with_a_long_eye if grades("on_eye_or_splice", 22) == {"eye_long"}

test_breaks_on_the_end_of_webbing if of("web_sling", "on_eye_or_splice", 15) == {"flat_end", "eye_long"}

test_breaks_on_the_handle_of_mesh if of("mesh_sling", "on_eye_or_splice", 30) == {"flat_end", "eye_long"}

test_meets_on_webbing if of("web_sling", "on_rope", 15) == set()

test_meets_on_rope if grades("on_rope", 56) == set()

test_meets_on_rope_of_two_turns_round_a_thin_body if grades("on_rope", 15) == set()

test_not_known_where_it_lands if finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "kind": "choke", "perimeter_d": 15}]}

package liftlint.rules.sling.rotation_resistant_or_lang_test

import data.liftlint.rules.sling.rotation_resistant_or_lang.finding

grades(resistant, lang) := got if {
	got := {f.grade | some f in finding} with input as {"ropes": [{"key": "rope/S1", "make_known": true, "rotation_resistant": resistant, "lang_lay": lang}]}
}

test_breaks_rotation_resistant if grades(true, false) == {"rotation_resistant"}

test_breaks_lang_lay if grades(false, true) == {"lang_lay"}

test_meets if grades(false, false) == set()
test_not_described if {
	finding == set() with input as {"ropes": [{"key": "rope/S1", "make_known": false, "rotation_resistant": false, "lang_lay": false}]}
}

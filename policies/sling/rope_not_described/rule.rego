# METADATA
# title: Rope not fully described
# description: >-
#   Orders and inspection reports are read for class and construction, core,
#   grade, finish and lay next to diameter and length. Without them nobody can
#   tell whether two slings are alike, or whether a tag can be right.
# custom:
#   severity: note
#   over: ropes
#   params:
#     wanted: [class, construction, core, grade, finish, lay]
#   message: "of the rope of {id} is not given: {names}"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.rope_not_described

import data.params.sling.rope_not_described as p

finding contains {"key": rope.key, "names": lacking} if {
	some rope in input.ropes
	lacking := [field | some field in p.wanted; not field in rope.described]
	count(lacking) > 0
}

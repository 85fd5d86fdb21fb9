# METADATA
# title: Tag missing or incomplete
# description: >-
#   A sling is used by what its tag says, and a bridle by the one tag of the
#   whole. One without a tag that can be read is taken out of service until it has
#   been identified and tagged again.
# custom:
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling, mesh_sling, bridle]
#     tagged_with_bridle: [false]
#     uses: {at_least: 1}
#   params:
#     required: [maker, diameter, rated_load, hitch]
#     required_of_bridles: [maker, diameter, rated_load, angle_from_horizontal, legs, rated_for]
#     required_of_chain_bridles: [maker, size, grade, length, rated_load, angle_from_horizontal, legs, rated_for]
#     required_of_chain: [maker, size, grade, length, rated_load, hitch]
#     required_of_webbing: [maker, material, rated_load, hitch]
#     required_of_round_slings: [maker, serial, material, rated_load, hitch]
#     required_of_mesh: [maker, choker_rated_load, basket_rated_load]
#   grades:
#     - name: missing
#       title: Tag missing
#       severity: error
#       message: "{id} has no tag: it stays out of service until a qualified person has identified, inspected and re-tagged it"
#     - name: illegible
#       title: Tag illegible
#       severity: error
#       message: "the tag of {id} can't be read: it stays out of service until a qualified person has identified, inspected and re-tagged it"
#     - name: incomplete
#       title: Tag incomplete
#       severity: error
#     - name: not_recorded
#       title: Tag not recorded
#       severity: {draft: note, review: error, prelift: error}
#       message: "nothing is on record of a tag on {id}: write down what it shows"
#   message: "the tag of {id} does not show: {names}"
#   place: tag
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(c)(16), for wire rope", basis: read, profiles: [us]}
#     - {document: 29 CFR 1910.184, clause: "(e)(1) for chain, (g)(1) for mesh, (i)(1) for webbing", basis: memory, profiles: [us]}
#     - {document: ASME B30.9, basis: memory, profiles: [us]}
#     - {document: EN 13414-1, clause: for wire rope, basis: memory, profiles: [eu]}
#     - {document: EN 818-4, clause: for chain, basis: memory, profiles: [eu]}
#     - {document: "EN 1492-1, EN 1492-2", clause: for webbing and round slings, basis: memory, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.missing_or_incomplete

import data.params.tag.missing_or_incomplete as p

finding contains {"key": item.key, "grade": "missing"} if {
	some item in input.gear
	item.tag.state == "missing"
}

finding contains {"key": item.key, "grade": "illegible"} if {
	some item in input.gear
	item.tag.state == "illegible"
}

finding contains {"key": item.key, "grade": "not_recorded"} if {
	some item in input.gear
	item.tag.state == "not_recorded"
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind in {"wire_rope_sling", "grommet"}
	item.tag.state == "legible"
	lacking := [field | some field in p.required; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "chain_sling"
	item.tag.state == "legible"
	lacking := [field | some field in p.required_of_chain; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "web_sling"
	item.tag.state == "legible"
	lacking := [field | some field in p.required_of_webbing; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "round_sling"
	item.tag.state == "legible"
	lacking := [field | some field in p.required_of_round_slings; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "mesh_sling"
	item.tag.state == "legible"
	lacking := [field | some field in p.required_of_mesh; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "bridle"
	item.tag.state == "legible"
	item.of_chain == true
	lacking := [field | some field in p.required_of_chain_bridles; not field in item.tag.shows]
	count(lacking) > 0
}

finding contains {"key": item.key, "grade": "incomplete", "names": lacking} if {
	some item in input.gear
	item.kind == "bridle"
	item.tag.state == "legible"
	item.of_chain == false
	lacking := [field | some field in p.required_of_bridles; not field in item.tag.shows]
	count(lacking) > 0
}

# METADATA
# title: Part overloaded
# description: >-
#   No part carries more than it is rated for in the way it is used. The factor
#   between rated load and strength is not there to be used up: it stands for
#   wear, shock and what nobody knows. A shackle that is pulled toward an end of
#   its pin, and an eyebolt that is pulled off its axis, carry less than is
#   marked on them. A sling carries what its tag says of its hitch, less what the
#   angle of a choke or a sharp bend takes.
# custom:
#   over: parts
#   measured: used_ratio
#   params:
#     over_ratio: {default: 1, at_least: 0.1, at_most: 1}
#     near_ratio: {default: 0.9, at_least: 0.1, at_most: 1}
#   grades:
#     - name: over_choked
#       severity: error
#       limit: over_ratio
#       message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of what it may carry in its choke, {rated_load_n}; at most {limit} is allowed. Its choker rating is {marked_load_n}, less what the angle of the choke takes"
#     - name: over_in_basket
#       severity: error
#       limit: over_ratio
#       message: "each run of the basket of {id} in {where} is judged with {load_n} ({judged_by}), {measured} of what it may carry, {rated_load_n}; at most {limit} is allowed. Its basket rating is {marked_load_n} for both runs, less what the bend takes"
#     - name: over_on_sheave
#       severity: error
#       limit: over_ratio
#       message: "each run of {id} over the sheave in {where} is judged with {load_n} ({judged_by}), {measured} of what it may carry, {rated_load_n}; at most {limit} is allowed. Its rating for a straight pull is {marked_load_n}, less what the bend takes"
#     - name: over_doubled
#       severity: error
#       limit: over_ratio
#       message: "{id}, laid double in {where}, is judged with {load_n} ({judged_by}), {measured} of what it may carry so, {rated_load_n}; at most {limit} is allowed. Not doubled it is rated for {marked_load_n}"
#     - name: over_at_angle
#       severity: error
#       limit: over_ratio
#       message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of its rated load as it is pulled, {rated_load_n}; at most {limit} is allowed. It is marked {marked_load_n}, for a steeper or straighter pull"
#     - name: over
#       severity: error
#       limit: over_ratio
#     - name: near_in_hitch
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of what it may carry in its hitch, {rated_load_n}; over {limit} leaves little for what is not known"
#     - name: near_at_angle
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of its rated load as it is pulled, {rated_load_n}; over {limit} leaves little for what is not known. It is marked {marked_load_n}, for a steeper or straighter pull"
#     - name: near
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of its rated load {rated_load_n}; over {limit} leaves little for what is not known"
#   message: "{id} in {where} is judged with {load_n} ({judged_by}), {measured} of its rated load {rated_load_n}; at most {limit} is allowed"
#   remedy: higher_rating
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(2), for the rated load", basis: memory, profiles: [us]}
#     - {document: DGUV 109-017, clause: for the rated load, basis: memory, profiles: [eu]}
#     - {document: WAC 296-155-33905, clause: for shackles that are pulled aside, basis: read}
#     - {document: marine lifting guideline, clause: for bends and the parts of doubled slings, basis: read}
#     - {document: common practice, clause: "for choke angles, eyebolts off their axis, and the share near the rated load", basis: practice}
package liftlint.rules.load.over_rated_load

import data.params.load.over_rated_load as p

finding contains {"key": part.key, "grade": "over_choked"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet"}
	part.hitch == "choke"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_in_basket"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet"}
	part.hitch == "basket"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_on_sheave"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet"}
	part.hitch == "over_sheave"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_doubled"} if {
	some part in input.parts
	part.kind == "grommet"
	part.rated_load_n > part.marked_load_n
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_at_angle"} if {
	some part in input.parts
	part.used_ratio > p.over_ratio
	part.rated_load_n < part.marked_load_n
}

finding contains {"key": part.key, "grade": "over"} if {
	some part in input.parts
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "near_in_hitch"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet"}
	part.hitch in {"choke", "basket", "over_sheave"}
	part.used_ratio > p.near_ratio
}

finding contains {"key": part.key, "grade": "near_in_hitch"} if {
	some part in input.parts
	part.kind == "grommet"
	part.rated_load_n > part.marked_load_n
	part.used_ratio > p.near_ratio
}

finding contains {"key": part.key, "grade": "near_at_angle"} if {
	some part in input.parts
	part.used_ratio > p.near_ratio
	part.rated_load_n < part.marked_load_n
}

finding contains {"key": part.key, "grade": "near"} if {
	some part in input.parts
	part.used_ratio > p.near_ratio
}

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
#       title: Sling overloaded in a choker hitch
#       severity: error
#       limit: over_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry in a choker hitch, {rated_load_n}; at most {limit} is allowed. Its choker rating is {marked_load_n}, less what the angle of the choke takes"
#     - name: over_in_basket
#       title: Sling overloaded in a basket hitch
#       severity: error
#       limit: over_ratio
#       message: "each run of the basket of {id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry, {rated_load_n}; at most {limit} is allowed. Its basket rating is {marked_load_n} for both runs, less what the bend takes"
#     - name: over_on_sheave
#       severity: error
#       limit: over_ratio
#       message: "each run of {id} over the sheave in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry, {rated_load_n}; at most {limit} is allowed. Its rating for a straight pull is {marked_load_n}, less what the bend takes"
#     - name: over_doubled
#       severity: error
#       limit: over_ratio
#       message: "{id}, laid double in {where}, has a design force of {load_n} ({judged_by}), {measured} of what it may carry so, {rated_load_n}; at most {limit} is allowed. Not doubled it is rated for {marked_load_n}"
#     - name: over_pulled_aside
#       title: Shackle overloaded as it is loaded
#       severity: error
#       limit: over_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry as it is loaded, {rated_load_n}; at most {limit} is allowed. It is marked {marked_load_n}, of which {takes}"
#     - name: over_at_angle
#       severity: error
#       limit: over_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry as used, {rated_load_n}; at most {limit} is allowed. It is marked {marked_load_n}, of which {takes}"
#     - name: over
#       severity: error
#       limit: over_ratio
#     - name: near_in_hitch
#       title: Sling near its rated load
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry in its hitch, {rated_load_n}; over {limit} leaves little for what is not known"
#     - name: near_at_angle
#       title: Part near its rated load
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of what it may carry as used, {rated_load_n}; over {limit} leaves little for what is not known. It is marked {marked_load_n}, of which {takes}"
#     - name: near
#       title: Part near its rated load
#       severity: warning
#       limit: near_ratio
#       message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of its rated load {rated_load_n}; over {limit} leaves little for what is not known"
#   message: "{id} in {where} has a design force of {load_n} ({judged_by}), {measured} of its rated load {rated_load_n}; at most {limit} is allowed"
#   remedy: higher_rating
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(2), for the rated load", basis: memory, profiles: [us], grades: [over_choked, over_in_basket, over_on_sheave, over_doubled, over_pulled_aside, over_at_angle, over]}
#     - {document: DGUV 109-017, clause: for the rated load, basis: memory, profiles: [eu], grades: [over_choked, over_in_basket, over_on_sheave, over_doubled, over_pulled_aside, over_at_angle, over]}
#     - {document: EN 818-6, clause: for bridles with legs left unused, basis: memory, profiles: [eu], grades: [over]}
#     - {document: WAC 296-155-33905, clause: for shackles that are side-loaded, basis: read, grades: [over_pulled_aside]}
#     - {document: marine lifting guideline, clause: for bends and the parts of doubled slings, basis: read, grades: [over_in_basket, over_on_sheave, over_doubled]}
#     - {document: common practice, clause: that a rated load is the most, basis: practice, grades: [over_choked, over_in_basket, over_on_sheave, over_doubled, over_pulled_aside, over_at_angle, over]}
#     - {document: common practice, clause: for choke angles, basis: practice, grades: [over_choked]}
#     - {document: common practice, clause: "for eyebolts off their axis, edges and heat", basis: practice, grades: [over_at_angle]}
#     - {document: common practice, clause: for the share near the rated load, basis: practice, grades: [near_in_hitch, near_at_angle, near]}
package liftlint.rules.load.over_rated_load

import data.params.load.over_rated_load as p

finding contains {"key": part.key, "grade": "over_choked"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}
	part.hitch == "choke"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_in_basket"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}
	part.hitch == "basket"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_on_sheave"} if {
	some part in input.parts
	part.kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}
	part.hitch == "over_sheave"
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_doubled"} if {
	some part in input.parts
	part.kind == "grommet"
	part.rated_load_n > part.marked_load_n
	part.used_ratio > p.over_ratio
}

finding contains {"key": part.key, "grade": "over_pulled_aside"} if {
	some part in input.parts
	part.kind == "shackle"
	part.used_ratio > p.over_ratio
	part.rated_load_n < part.marked_load_n
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
	part.kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}
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

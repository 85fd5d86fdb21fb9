# METADATA
# title: No rating for the hitch in use
# description: >-
#   A sling may be choked or laid in a basket only by what its tag says of that
#   hitch. The rating of a straight pull does not tell: how a choke bites and how
#   a basket bends depend on how the sling is made.
# custom:
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling, mesh_sling]
#     tag.state: [legible]
#     uses: {at_least: 1}
#   params:
#     shown_for_every_hitch: [mesh_sling] # by tag/missing_or_incomplete
#   grades:
#     - name: choke
#       title: No choker rating on the tag
#       severity: error
#     - name: basket
#       title: No basket rating on the tag
#       severity: error
#       message: "{id} lies in a basket, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `basket_rated_load` if it does"
#     - name: straight
#       title: No rating for a straight pull on the tag
#       severity: error
#       message: "{id} pulls straight, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `rated_load` if it does"
#   message: "{id} is choked, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `choker_rated_load` if it does"
#   place: tag
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(c)(16), for ratings by hitch", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.hitch_rating_missing

import data.params.tag.hitch_rating_missing as p

finding contains {"key": item.key, "grade": "choke"} if {
	some item in input.gear
	not item.kind in p.shown_for_every_hitch
	"choke" in item.hitches
	not "choker_rated_load" in item.tag.shows
}

finding contains {"key": item.key, "grade": "basket"} if {
	some item in input.gear
	not item.kind in p.shown_for_every_hitch
	"basket" in item.hitches
	not "basket_rated_load" in item.tag.shows
}

# Of other kinds the rated load for a straight pull has to stand on the tag anyway.
finding contains {"key": item.key, "grade": "straight"} if {
	some item in input.gear
	item.kind == "mesh_sling"
	"straight" in item.hitches
	not "rated_load" in item.tag.shows
}

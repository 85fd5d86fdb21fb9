# METADATA
# title: Link or hook of a lower grade than its chain
# description: >-
#   The links and hooks of a chain sling are of the grade of its chain or above. One of
#   a lower grade looks alike, is taken for as strong as the chain by everyone who
#   reads its tag, and makes the sling another one.
# custom:
#   severity: warning
#   over: gear
#   where:
#     uses: {at_least: 1}
#     steel_against_chain: [as_good, weaker]
#   message: "{id} holds chain of grade {chain_held} and is of a lower grade: take a fitting of the chain's own grade, or have the sling rated and tagged by its weakest part"
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(e)(2)", basis: memory, profiles: [us]}
#     - {document: EN 818-4, basis: memory, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.steel_under_chain

finding contains item.key if {
	some item in input.gear
	item.steel_against_chain == "weaker"
}

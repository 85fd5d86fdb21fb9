# METADATA
# title: Master link weaker than its bridle
# description: >-
#   The master link carries whatever the legs carry together. It is rated for at
#   least as much as the bridle.
# custom:
#   severity: error
#   over: bridles
#   measured: master_over_assembly_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 1, at_least: 1, at_most: 2}
#   message: "the master link of {id} is rated for {measured} of what the bridle is rated for; at least {limit} is asked for"
#   remedy: stronger_master_link
#   place: master
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.bridle.master_link_weak

import data.params.bridle.master_link_weak as p

finding contains bridle.key if {
	some bridle in input.bridles
	bridle.master_over_assembly_ratio < p.least_ratio
}

# METADATA
# title: Eyebolt or hoist ring not seated
# description: >-
#   The shoulder of an eyebolt, the base of a hoist ring, carries the side part of
#   the pull only where it bears tight on the load all round.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [eyebolt, hoist_ring]
#     legs: {at_least: 1}
#   message: "attachment {id} does not bear tight on the load: tighten it, shim it, or spot-face its seat"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.not_seated

finding contains point.key if {
	some point in input.attachments
	point.seated == "not_seated"
}

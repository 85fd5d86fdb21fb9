# METADATA
# title: Insert in concrete too weak
# description: >-
#   An insert in concrete has to hold several times the pull on it: twice in a
#   panel that is tilted up, four times in any other member, and its lifting
#   hardware five times. Nobody is under a panel, nor where it could fall, while it is
#   tilted or lifted.
# custom:
#   over: attachments
#   where:
#     kind: [insert]
#     legs: {at_least: 1}
#   params:
#     tilt_up_times: {default: 2, at_least: 2, at_most: 10}
#     other_times: {default: 4, at_least: 4, at_most: 10}
#     hardware_times: {default: 5, at_least: 5, at_most: 10}
#   grades:
#     - name: tilt_up
#       severity: error
#       measured: breaking_over_pull_times
#       limit: tilt_up_times
#       message: "insert {id} holds {measured} the pull on it; in a panel that is tilted up at least {limit} is asked for"
#     - name: other
#       severity: error
#       measured: breaking_over_pull_times
#       limit: other_times
#     - name: hardware
#       title: Hardware in an insert too weak
#       severity: error
#       measured: hardware_breaking_over_pull_times
#       limit: hardware_times
#       message: "the lifting hardware in insert {id} holds {measured} the pull on it; at least {limit} is asked for"
#   message: "insert {id} holds {measured} the pull on it; at least {limit} is asked for"
#   remedy: stronger_insert
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.704, clause: "(b) to (d); (e) for people under a panel, from memory", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.load.insert_weak

import data.params.load.insert_weak as p

finding contains {"key": point.key, "grade": "tilt_up"} if {
	some point in input.attachments
	point.panel == "tilt_up"
	point.breaking_over_pull_times < p.tilt_up_times
}

finding contains {"key": point.key, "grade": "other"} if {
	some point in input.attachments
	point.panel == "other"
	point.breaking_over_pull_times < p.other_times
}

finding contains {"key": point.key, "grade": "hardware"} if {
	some point in input.attachments
	point.hardware_breaking_over_pull_times < p.hardware_times
}

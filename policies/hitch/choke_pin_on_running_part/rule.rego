# METADATA
# title: Shackle of a choke turned wrong
# description: >-
#   A shackle that closes a choke has its pin in the eye and its bow on the
#   running part. The other way round the rope runs over the pin as the choke draws
#   tight, and can unscrew it.
# custom:
#   over: hitches
#   where:
#     kind: [choke]
#     pin_in: [eye, running_part, not_given]
#   grades:
#     - name: on_running_part
#       severity: error
#     - name: not_given
#       severity: note
#       title: Way round of a choke's shackle not given
#       message: "the plan does not say how the shackle that closes the choke of {sling} on {round} is turned: its pin goes through the eye, not round the running part; add `pin_in`"
#   message: "the pin of the shackle that closes the choke of {sling} on {round} bears on the running part, which can unscrew it: turn the shackle round, with its pin in the eye"
#   cite:
#     - {document: WAC 296-155-33905, basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.choke_pin_on_running_part

finding contains {"key": hitch.key, "grade": "on_running_part"} if {
	some hitch in input.hitches
	hitch.pin_in == "running_part"
}

finding contains {"key": hitch.key, "grade": "not_given"} if {
	some hitch in input.hitches
	hitch.pin_in == "not_given"
}

# METADATA
# title: Hook without working latch
# description: >-
#   Slack rigging lifts itself out of a hook that nothing closes. Hooks made for
#   sorting, for chain, for foundry work and open J hooks have none by design.
# custom:
#   over: hook_uses
#   where: {made_for: [lifting]}
#   grades:
#     - name: none
#       title: Hook without latch
#       severity: error
#     - name: faulty
#       title: Hook with a faulty latch
#       severity: error
#       message: "the latch of {name} is faulty: have it mended, or use another hook"
#   message: "{name} has no latch: use one that closes by itself"
#   cite:
#     - {document: 29 CFR 1926.1425, clause: "(c)(2), while people hook, unhook or guide the load or are where it could fall", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.hook_latch

finding contains {"key": use.key, "grade": "none"} if {
	some use in input.hook_uses
	use.latch == "none"
}

finding contains {"key": use.key, "grade": "faulty"} if {
	some use in input.hook_uses
	use.latch == "faulty"
}

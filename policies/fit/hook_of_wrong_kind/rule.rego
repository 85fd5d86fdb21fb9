# METADATA
# title: Hook of the wrong kind for an attachment
# description: >-
#   A grab hook takes a link of chain in its slot and nothing else; in a hole or a ring
#   its tip alone bears. Sorting, J and foundry hooks are open by design, for pipe ends,
#   bundles, trusses and trunnions: that they need no latch holds for that work, not for
#   the padeye, eyebolt or hoist ring of a load, out of which slack lifts them.
# custom:
#   over: hook_uses
#   where: {of: [sling]}
#   grades:
#     - name: grab
#       title: Grab hook in an attachment
#       severity: error
#       message: "{name} is a grab hook, which takes nothing but a link of chain, and hangs in {passes}: use a sling hook with a latch, or a shackle"
#     - name: open
#       title: Open hook in an attachment
#       severity: error
#     - name: foundry
#       title: Foundry hook without latch in an attachment
#       severity: warning
#   message: "{name} is made for other work, {made_for}, and hangs in {passes} with no latch that works: use a sling hook with a latch, or a shackle"
#   cite:
#     - {document: 29 CFR 1926.1425, clause: "(c), for which hooks need no latch that closes by itself", basis: read, profiles: [us]}
#     - {document: ASME B30.10, clause: for what kinds of hook are made for, basis: memory}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.hook_of_wrong_kind

finding contains {"key": use.key, "grade": "grab"} if {
	some use in input.hook_uses
	use.made_for == "grab"
}

finding contains {"key": use.key, "grade": "open"} if {
	some use in input.hook_uses
	use.made_for in {"sorting", "j"}
	use.latch in {"none", "faulty"}
}

finding contains {"key": use.key, "grade": "foundry"} if {
	some use in input.hook_uses
	use.made_for == "foundry"
	use.latch in {"none", "faulty"}
}

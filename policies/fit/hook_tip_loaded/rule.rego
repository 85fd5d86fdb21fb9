# METADATA
# title: Hook loaded at its tip
# description: >-
#   A hook carries in its bowl. What is too thick for the throat stays on the
#   tip, which bends open under a fraction of the rated load.
# custom:
#   severity: error
#   over: hook_uses
#   measured: widest_m
#   limit: throat_m
#   message: "{passes} is {measured} thick and does not pass the throat of {name}, which opens {limit}: it would hang on the tip"
#   remedy: wider_throat
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.hook_tip_loaded

finding contains use.key if {
	some use in input.hook_uses
	use.widest_m > use.throat_m
}

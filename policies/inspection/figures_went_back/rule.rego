# METADATA
# title: Damage that went back
# description: >-
#   Wires do not grow together again, and worn steel does not come back. Where a
#   later record finds less than an earlier one and no repair is on record, one of
#   the two is wrong, or is of another item. The worse one counts until somebody who
#   is named has found the item fit in an inspection that goes as far.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#   grades:
#     - name: not_counted
#       severity: warning
#       message: "{named} on {id}: {back.worse} on {back.worse_date}, {back.better} on {back.better_date}; the later record {back.because}, so the earlier one counts"
#     - name: counted
#       severity: warning
#   message: "{named} on {id}: {back.worse} on {back.worse_date}, {back.better} on {back.better_date}, and no repair on record between them: find out which is right, and whether both are of this item"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.figures_went_back

finding contains {"key": sign.key, "grade": "not_counted"} if {
	some sign in input.signs
	sign.went_back == "not_counted"
}

finding contains {"key": sign.key, "grade": "counted"} if {
	some sign in input.signs
	sign.went_back == "counted"
}

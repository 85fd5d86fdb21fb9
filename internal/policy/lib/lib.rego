# What rules need beyond comparing one figure with another. Every function here
# gives a value for every argument of its kind: nothing in it can turn out
# undefined and so be taken for met.
package liftlint.lib

# differ(a, b, share): whether a lies further from b than that share of b.
differ(a, b, share) := abs(a - b) > abs(share * b)

# between(x, low, high): whether x lies in the range, its ends included.
between(x, low, high) := count([1 | x >= low; x <= high]) == 1

# missing(wanted, list): the texts wanted that the list does not hold, in their
# order.
missing(wanted, list) := [w | some w in wanted; not w in list]

# shared(a, b): the texts of a that b holds too, in their order.
shared(a, b) := [x | some x in a; x in b]

# has_label(labels, label): whether there is such a label, whatever its value.
has_label(labels, label) := count(values(labels, label)) > 0

# label(labels, label): the value of the first such label, and "" where there is
# none.
default label(_, _) := ""

label(labels, label) := values(labels, label)[0]

values(labels, label) := [substring(l, at + 1, -1) |
	some l in labels
	at := indexof(l, "=")
	substring(l, 0, at) == label
]

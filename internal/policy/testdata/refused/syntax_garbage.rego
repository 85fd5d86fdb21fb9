this is no rule

# want 1:1: package expected
# want 1:6: var cannot be used for rule name
# want 1:9: var cannot be used for rule name
# want 1:12: var cannot be used for rule name

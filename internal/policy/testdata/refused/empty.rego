

# want 1:1: the file is empty

package triage

// Grown are the entries of a plan that a baseline has taken in since another: those that
// are new, and those under which something worse is known. c is the plan's as it is now;
// that it may have been called otherwise makes no difference.
func Grown(old, new *Baseline, oldFile, newFile string, c Case) []KnownFinding {
	if new == nil {
		return nil
	}
	was := map[[2]string]KnownFinding{}
	if old != nil {
		for _, k := range old.plan(oldFile).Findings {
			k = k.underNewID(newFile, c)
			was[[2]string{k.Rule, k.Key}] = k
		}
	}
	var grown []KnownFinding
	for _, k := range new.plan(newFile).Findings {
		k = k.underNewID(newFile, c)
		if before, ok := was[[2]string{k.Rule, k.Key}]; !ok || before.worse(k.finding(), c) != "" {
			grown = append(grown, k)
		}
	}
	return grown
}

package triage

// Merged tells what became of a baseline that is written anew.
type Merged struct {
	Baseline *Baseline
	Dropped  int // entries that no longer occur
	Kept     int // entries of which it can't be told whether they still occur
	LeftOut  int // findings that are new or worse, and not taken in
}

// Merge brings a baseline up to what is found today. It only shrinks: an entry
// that no longer occurs goes, one that got better is kept as it is now, and what
// is new or worse is taken in only to grow. Entries that a rule could not judge
// stay as they are, and so do plans that were not judged, as far as there still is
// one.
func (b *Baseline) Merge(today []KnownPlan, grow bool, exists func(file string) bool) (Merged, error) {
	m := Merged{Baseline: &Baseline{Version: BaselineVersion, Stage: b.Stage, File: b.File}}
	judged := map[string]bool{}
	for _, now := range today {
		if err := b.Fits(now.File, now.Profile); err != nil {
			return m, err
		}
		judged[now.File] = true
		m.plan(b.plan(now.File), now, grow)
	}
	for _, p := range b.Plans {
		switch {
		case judged[p.File]:
		case exists(p.File):
			m.Baseline.Plans = append(m.Baseline.Plans, p)
		default:
			m.Dropped += len(p.Findings)
		}
	}
	return m, nil
}

// plan brings one plan up to date.
func (m *Merged) plan(then, now KnownPlan, grow bool) {
	was := map[string]KnownFinding{}
	for _, k := range then.Findings {
		k = k.underNewID(now.File, now.judged)
		was[k.Fingerprint] = k
	}
	out := KnownPlan{File: now.File, Profile: now.Profile}
	for _, k := range now.Findings {
		old, ok := was[k.Fingerprint]
		delete(was, k.Fingerprint)
		switch {
		case grow || ok && old.worse(k.finding(), now.judged) == "": // nor by less than is printed, of which many would add up
			out.Findings = append(out.Findings, k)
		case ok && old.worse(k.taken, now.judged) == "":
			out.Findings = append(out.Findings, old)
		case ok:
			out.Findings = append(out.Findings, old)
			m.LeftOut++
		default:
			m.LeftOut++
		}
	}
	for _, old := range was {
		if now.judged.idle(old.Rule, old.Key) == "" {
			m.Dropped++
			continue
		}
		out.Findings = append(out.Findings, old) // put in order as they are written
		m.Kept++
	}
	m.Baseline.Plans = append(m.Baseline.Plans, out)
}

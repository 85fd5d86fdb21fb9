package plangen

// arrangement is one way to hang a load other than on straight legs from one
// hook.
type arrangement struct {
	name  string
	build func(*rig)
}

func arrangements() []arrangement {
	return []arrangement{
		{"spreader", (*rig).spreader},
		{"lifting beam", (*rig).liftingBeam},
		{"two levels of beams", (*rig).twoLevels},
		{"rocker plates", (*rig).rockers},
		{"two hooks", (*rig).girder},
		{"turned up", (*rig).turnUp},
		{"baskets", (*rig).baskets},
		{"baskets between points", (*rig).cradle},
		{"chokes", (*rig).chokes},
		{"column", (*rig).column},
		{"sheaves", (*rig).sheaves},
	}
}

// Arrangements is how many kinds of arrangement there are.
func Arrangements() int { return len(arrangements()) }

// ArrangementOf names the kind of arrangement that a seed gives: its remainder by
// Arrangements, so that each kind has the same share.
func ArrangementOf(seed uint64) string { return arrangementOf(seed).name }

func arrangementOf(seed uint64) arrangement {
	list := arrangements()
	return list[seed%uint64(len(list))]
}

// Arranged is the text of a complete plan whose load hangs steady from beams or
// several hooks, on slings round bodies or over sheaves. Beside what its kind has,
// two in ten of the slings below beams are grommets, most of them doubled, one in ten
// of the straight legs has a load
// cell and one in ten a turnbuckle below it; three in ten of the points of
// spreaders hold a bridle of two legs; one plan in ten leaves the lengths of the
// legs below a beam open and gives the height. Valid gives the plain lifts, on
// which speed is measured.
func Arranged(seed uint64) string { return print(seed, arrange(seed).tree()) }

// ArrangedDraft is the text of an arrangement as it comes to the desk, as Draft is of
// plain lifts: data left out, slings of any length, a center of gravity anywhere.
// Nothing is promised of how it hangs or of what rules find in it.
func ArrangedDraft(seed uint64) string { return print(seed, arrangedDraft(seed)) }

func arrange(seed uint64) *rig {
	g := newRig(stream(seed, arranging))
	arrangementOf(seed).build(g)
	return g
}

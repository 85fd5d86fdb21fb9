package facts

// OnFile is what a gear register has on one sling or fitting of the lift.
type OnFile struct {
	Record
	ID     string `json:"id" doc:"Its id in the plan."`
	Number string `json:"number" doc:"Its number in the register."`
	Named  string `json:"named" doc:"What it is called: its id, and its number where that is another, with commas around it."`
	Kind   string `json:"kind" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling,bridle,shackle,master_link,intermediate_link,hook,load_cell,turnbuckle,adjuster,swivel,sheave_block,spreader_beam,lifting_beam,lifting_device,rocker_plate" doc:"What it is."`
	Uses   int    `json:"uses" doc:"Number of places in the lift where it is used."`

	Status       string `json:"status" enum:"in_service,quarantined,out_of_service,scrapped,not_given" doc:"Whether it may be used, as the register has it."`
	Because      string `json:"because" doc:"Why it has that status, in the words of the register with a colon before them; empty where it does not say."`
	Overload     string `json:"overload" enum:"none,not_cleared,cleared" doc:"Whether an overload or shock load is on record by the day of the lift, and whether somebody who is named had cleared it by then."`
	HistoryKnown string `json:"history_known" enum:"yes,no,not_given" doc:"Whether it is known what it has been through."`

	SerialsUnlike    []string `json:"serials_unlike" enum:"register,tag,certificate" doc:"Where its serial number stands, if the numbers differ; empty where they agree or there are none to compare."`
	RatedLoadsUnlike []string `json:"rated_loads_unlike" enum:"register,tag,certificate" doc:"Where its rated load stands, if the loads differ by more than 1 %; a tag counts where its load is for one straight pull."`

	Inspected bool         `json:"inspected" doc:"Whether an inspection of the item as a whole is on record, by the day of the lift."`
	Newest    LastOnRecord `json:"newest" doc:"The newest of them."`

	Failed FailedOnRecord `json:"failed" doc:"The newest inspection, look, test or repair of any kind, by the day of the lift, that did not pass it and that none after has answered: one that goes as far, passed by somebody who is named."`
	Repair RepairOnRecord `json:"repair" doc:"The newest repair on record by the day of the lift."`

	ProofTested string   `json:"proof_tested" enum:"yes,load_not_given,no" doc:"Whether a proof test is on record by the day of the lift: a test that somebody who is named passed, what the certificate says, or what the item says."`
	ProofRatio  *float64 `json:"proof_over_rated_ratio,omitempty" doc:"Load of its greatest proof test over its rated load. Concerns what was tested with a load that is given."`
}

// LastOnRecord is the newest inspection of an item.
type LastOnRecord struct {
	At      string   `json:"at" doc:"Where it stands; the item where there is none."`
	Date    string   `json:"date" doc:"Its day, year-month-day; empty where there is none."`
	Outcome string   `json:"outcome" enum:"passed,passed_with_remarks,failed,not_given" doc:"What it came to."`
	Lacks   []string `json:"lacks" enum:"inspector,outcome,next_due,measures" doc:"What the record does not say; measures where it says nothing of what was measured or seen; the next due day only where the item is not overdue."`
}

// RepairOnRecord is the newest repair of an item.
type RepairOnRecord struct {
	At          string `json:"at" doc:"Where it stands; the item where there is none."`
	Date        string `json:"date" doc:"Its day, year-month-day; empty where there is none."`
	ProofTested string `json:"proof_tested" enum:"none,yes,no" doc:"Whether a proof test that somebody who is named passed is on record after it, or a certificate of one from that day on, or the repair itself names a proof load; none where there was no repair."`
}

// FailedOnRecord is a record by which an item is unfit.
type FailedOnRecord struct {
	At    string `json:"at" doc:"Where it stands; the item where there is none."`
	Date  string `json:"date" doc:"Its day, year-month-day; empty where there is none."`
	What  string `json:"what" enum:"before_use,frequent,periodic,thorough,proof_test,repair,none" doc:"What kind of record it is."`
	Named string `json:"named" doc:"The same as it is called in a sentence."`
}

// Sign is one thing that inspections of an item on file looked for: the worst on
// record that no later record takes back.
type Sign struct {
	Record
	ID    string `json:"id" doc:"The item's id in the plan."`
	Kind  string `json:"kind" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling,bridle,shackle,master_link,intermediate_link,hook,load_cell,turnbuckle,adjuster,swivel,sheave_block,spreader_beam,lifting_beam,lifting_device,rocker_plate" doc:"What the item is."`
	Rope  string `json:"rope" enum:"single_part,multi_part,multi_part_of_8_and_more,cable_laid,none" doc:"How the rope of the item is made, of a bridle that of its legs; none for what is no rope. A multi-part body counts as of few parts where their number is not given."`
	Uses  int    `json:"uses" doc:"Number of places in the lift where the item is used."`
	What  string `json:"what" enum:"broken_wires_in_one_lay,broken_wires_in_one_strand_in_one_lay,broken_wires_in_6_d,broken_wires_in_30_d,broken_wires_adjacent,broken_wires_at_fitting,outer_wire_wear,diameter_now,length_now,throat_now,twist,wear,stretch,kink,crushed,birdcage,corrosion,heat_damage,splice_slipped,sleeve_cracked,thimble_loose,cracked,latch,bent,pin_original,bent_link,cut,abraded,burned,stitching_broken,core_exposed,chemical,knotted,broken_weld,broken_wire,tag_legible" doc:"What was looked for."`
	Named string `json:"named" doc:"What it is called where it is found."`
	Date  string `json:"date" doc:"Day of the record that counts, year-month-day: that of the worst that no later one takes back. One does that where somebody who is named passed the item in it, looking as closely or after a repair."`

	WentBack string `json:"went_back" enum:"no,counted,not_counted" doc:"Whether what can't become better by itself was found to be less than before, with no repair on record that says why: counted where the later figure stands all the same, not_counted where the earlier does. Two measurements may differ by 2 % or 2 degrees."`
	Back     Back   `json:"back" doc:"What was found before and after; empty where it did not go back."`

	Seen      *bool    `json:"seen,omitempty" doc:"Whether it is there. Concerns what is there or not; of corrosion, whether it is severe."`
	Count     *float64 `json:"count,omitempty" doc:"How many there are. Concerns broken wires."`
	LostRatio *float64 `json:"lost_ratio,omitempty" doc:"How much is worn off, 1 being all of the section or of the outer wires' diameter, or how much of its diameter a rope has lost. Concerns wear and diameters."`
	GrewRatio *float64 `json:"grew_ratio,omitempty" doc:"How much longer it has become, or a throat wider, 1 being as much again. Concerns stretch, lengths and throats."`
	GrewM     *float64 `json:"grew_m,omitempty" doc:"How much longer it has become, or a throat wider. Concerns lengths and throats."`
	TwistDeg  *float64 `json:"twist_out_of_plane_deg,omitempty" doc:"How far it is twisted out of its own plane. Concerns twist."`
}

// Back is what two records say of one sign.
type Back struct {
	Worse      string `json:"worse" doc:"What the earlier one says, in words."`
	WorseDate  string `json:"worse_date" doc:"Its day, year-month-day."`
	Better     string `json:"better" doc:"What the later one says, in words."`
	BetterDate string `json:"better_date" doc:"Its day, year-month-day."`
	Because    string `json:"because" doc:"Why the later one does not stand in the place of the earlier, in words; empty where it does."`
}

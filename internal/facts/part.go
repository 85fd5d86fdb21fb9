package facts

// Part is one piece in the way of the force, in one use.
type Part struct {
	Record
	ID          string   `json:"id" doc:"Its number in the plan."`
	Kind        string   `json:"kind" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling,bridle,shackle,master_link,intermediate_link,hook,load_cell,turnbuckle,adjuster,swivel,sheave_block,spreader_beam,lifting_beam,lifting_device,rocker_plate,padeye,eyebolt,hoist_ring,beam_point" doc:"What it is."`
	Where       string   `json:"where" doc:"The leg, legs or support it works in."`
	Split       string   `json:"split" enum:"settled_by_statics,settled_by_stiffness" doc:"What settles its share of the load; load_bound_n exists for settled_by_stiffness only."`
	RiggingN    float64  `json:"rigging_n" doc:"Weight of the part itself and of the rigging below it, as far as its mass is given; held in load_n and load_bound_n. Zero for an attachment."`
	JudgedBy    *string  `json:"judged_by,omitempty" enum:"own_force,own_force_at_worst,legs_counted,whole_load,bound" doc:"Which force that is: that of its leg with the lengths as given, that of the legs that the profile counts, the most that any lengths can bring about, or the weight of all."`
	LoadN       *float64 `json:"load_n,omitempty" doc:"Force it is judged by. Of an attachment, that of all its legs, added up as if they pulled one way."`
	LoadBoundN  *float64 `json:"load_bound_n,omitempty" doc:"The most it can be made to carry by small differences of length, where stiffness settles the split."`
	Phase       *string  `json:"phase,omitempty" doc:"The phase in which that force is greatest; absent where it is the same in all, or its pieces are greatest in several. Concerns a lift in phases."`
	MarkedLoadN *float64 `json:"marked_load_n,omitempty" doc:"Its rated load as marked, or as its tag rates it for one leg."`
	PullOffDeg  *float64 `json:"pull_off_deg,omitempty" doc:"Angle by which the pull on a shackle leans toward an end of its pin, or that on an eyebolt leans from its axis. Concerns those that an attachment holds so that they can't turn into the pull."`
	Hitch       string   `json:"hitch" enum:"straight,basket,choke,over_sheave" doc:"The hitch of the leg it works in; straight for what works in none, and for a sling above the one that makes the hitch."`
	HitchRatio  *float64 `json:"hitch_ratio,omitempty" doc:"What its hitch leaves of its marked load, for one of the parts that carry: by the angle of the choke, by the bend, by the number of parts. Concerns slings that are doubled, in a basket or choked."`
	RatedLoadN  *float64 `json:"rated_load_n,omitempty" doc:"What it, or each of its parts in a basket or doubled, may carry as used: as marked, less what angle, bend and hitch take."`
	Takes       string   `json:"takes" doc:"What makes that differ from what is marked, and what of it each leaves, in words; empty where nothing does or it is not known."`
	UsedRatio   *float64 `json:"used_ratio,omitempty" doc:"Force over rated load."`
}

package facts

// Rope is the rope of one wire rope sling that is used, and how it is made.
type Rope struct {
	Record
	ID        string   `json:"id" doc:"The sling's number in the plan."`
	InBridle  bool     `json:"in_bridle" doc:"Whether it is a leg of a bridle."`
	Described []string `json:"described" enum:"class,construction,core,grade,finish,lay" doc:"What the plan says of the rope besides its diameter."`

	DiameterM         *float64 `json:"diameter_m,omitempty" doc:"Diameter of the rope."`
	Body              string   `json:"body" enum:"single_part,multi_part,cable_laid" doc:"How its body is made: of one rope, of parts braided together, of ropes laid round one another."`
	ComponentM        *float64 `json:"component_diameter_m,omitempty" doc:"Diameter of the rope that its parts are of. Concerns a body of several."`
	BodyAgrees        *string  `json:"body_over_components_agrees,omitempty" enum:"yes,no,lay_up_not_known" doc:"Whether body and component, as given, can both be right by the number of parts, to 15 %; lay_up_not_known for other numbers of a multi-part body than 7 and 9; a cable-laid one is three ropes thick. Concerns a body of several ropes."`
	Core              string   `json:"core" enum:"fiber,iwrc,not_given" doc:"Its core."`
	MakeKnown         bool     `json:"make_known" doc:"Whether class and lay are given, or one of them settles that it is no sling rope."`
	LangLay           bool     `json:"lang_lay" doc:"Whether the plan names it as of lang lay."`
	RotationResistant bool     `json:"rotation_resistant" doc:"Whether the plan names it as of a rotation-resistant class."`
	LookedOver        bool     `json:"looked_over" doc:"Whether the plan says what is seen on it, nothing included."`
	FaultsSeen        []string `json:"faults_seen" enum:"knot,kink,crushed,birdcage,heat,repair" doc:"What is seen on it that puts it out of service."`
	EyeKinds          []string `json:"eye_kinds" enum:"flemish_sleeve,turn_back_sleeve,hand_tucked,hidden_tuck,socket,clipped,knotted,not_given" doc:"How its eyes are made."`
	Sleeves           []string `json:"sleeves" enum:"steel,aluminum,not_given" doc:"The metals of its sleeves; not_given stands for a sleeve, or an eye that may have one, of which the plan does not say."`
	TuckedSplices     bool     `json:"tucked_splices" doc:"Whether both its eyes are tucked, with no sleeve."`

	SplicesGiven bool     `json:"splices_given" doc:"Whether the plan gives how long the splice or sleeve at each end is; a socket has none."`
	ClearRopeD   *float64 `json:"clear_rope_d,omitempty" doc:"Length of plain rope between its splices or sleeves, in rope diameters. Where the length of a splice is not given, the figure with the longest usual one if that leaves 20 or more, or with the shortest if that leaves less than 10; in between it is not known."`

	LeastClearRopeD *float64 `json:"least_clear_rope_d,omitempty" doc:"The least such length by the practice of the profile, in diameters of the finished body too: of a multi-part sling it is counted in those of its component."`

	TemperatureGiven bool     `json:"temperature_given" doc:"Whether the plan gives the temperature of the gear."`
	LowestC          *float64 `json:"lowest_c,omitempty" doc:"How cold it gets. Absent where the plan gives no temperature."`
	HighestC         *float64 `json:"highest_c,omitempty" doc:"How hot it gets. Absent where the plan gives no temperature."`
}

// Bridle is a number of legs on a master link under one tag.
type Bridle struct {
	Record
	ID             string  `json:"id" doc:"Its number in the plan."`
	Legs           int     `json:"legs" doc:"Number of its legs, parked ones among them."`
	LegsUsed       int     `json:"legs_used" doc:"Number of its legs that carry."`
	LegsOnTag      *int    `json:"legs_on_tag,omitempty" doc:"Number of legs that its tag names. Does not concern a tag that names none."`
	LegsOnTagGiven bool    `json:"legs_on_tag_given" doc:"Whether its tag names a number of legs."`
	RatedFor       *string `json:"rated_for,omitempty" enum:"one_leg,assembly" doc:"What the rated load on its tag is for."`

	OneLegRatedN      *float64 `json:"one_leg_rated_n,omitempty" doc:"What its tag rates one leg for, along the leg."`
	AssemblyRatedN    *float64 `json:"assembly_rated_n,omitempty" doc:"What its tag rates all its legs together for; where it rates one leg, at the angle for which such bridles are usually rated."`
	Master            OfGear   `json:"master" doc:"Its master link."`
	MasterRatio       *float64 `json:"master_over_assembly_ratio,omitempty" doc:"Rated load of its master link over that of the whole bridle."`
	IntermediateLinks int      `json:"intermediate_links" doc:"Number of its intermediate links."`
	IntermediateRatio *float64 `json:"intermediate_over_leg_ratio,omitempty" doc:"Rated load of its weakest intermediate link over that of one leg. Concerns bridles with intermediate links."`
	WeakLinks         OfGear   `json:"weak_intermediate_links" doc:"Its intermediate links that are rated for less than 1.6 times one leg, or where none is, those that are rated for the least; none where that is not known."`
	LowerFittingRatio *float64 `json:"lower_fitting_over_leg_ratio,omitempty" doc:"Rated load of the weakest fitting at the lower end of a leg in use over that of one leg. Concerns bridles with such fittings."`
	WeakFittings      OfGear   `json:"weak_lower_fittings" doc:"The fittings at the lower ends of its legs in use that are rated for less than one leg, or where none is, those that are rated for the least; none where that is not known."`
	LowerFittings     int      `json:"lower_fittings" doc:"Number of fittings at the lower ends of its legs in use."`
	GroupedAs         *string  `json:"grouped_as,omitempty" enum:"adjacent,diagonal,does_not_matter" doc:"Whether the legs on one intermediate link go to points that lie next to each other round the load, seen from above; matters with four legs in use, two of them on one link."`
	LengthSpreadD     *float64 `json:"length_spread_d,omitempty" doc:"Difference of its longest and shortest leg, in rope diameters. Concerns bridles of two legs and more."`
}

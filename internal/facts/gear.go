package facts

// Gear is one sling or fitting.
type Gear struct {
	Record
	ID                   string      `json:"id" doc:"Its number in the plan."`
	Kind                 string      `json:"kind" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling,bridle,shackle,master_link,intermediate_link,hook,load_cell,turnbuckle,adjuster,swivel,sheave_block,spreader_beam,lifting_beam,lifting_device,rocker_plate" doc:"What it is."`
	Uses                 int         `json:"uses" doc:"Number of places in the lift where it is used."`
	Hitches              []string    `json:"hitches" enum:"straight,basket,choke,over_sheave" doc:"The hitches that it makes where it is used, each once: the last sling of a leg makes the hitch of the leg, those above it pull straight. Empty for what is no sling."`
	Labels               []string    `json:"labels" doc:"A company's own labels of it, each as label=value."`
	InBridle             bool        `json:"in_bridle" doc:"Whether it is part of a bridle."`
	TaggedWithBridle     bool        `json:"tagged_with_bridle" doc:"Whether the tag of a bridle holds for it, and it has none of its own."`
	InspectedWithBridle  bool        `json:"inspected_with_bridle" doc:"Whether it is inspected as part of a bridle, or as the hook at the end of a leg of one, and has no inspection of its own."`
	DiameterM            *float64    `json:"diameter_m,omitempty" doc:"Diameter of the rope, nominal size of a chain, or section of a link or hook. No others have one."`
	LengthM              *float64    `json:"length_m,omitempty" doc:"Length from bearing point to bearing point. A bridle and a beam have none of their own."`
	OutsideRangeM        *float64    `json:"outside_range_m,omitempty" doc:"By how much its length as set lies outside what it can be set to; zero inside. Concerns turnbuckles and adjusters."`
	PinTurnedBy          *string     `json:"pin_turned_by,omitempty" enum:"nothing,turning_load,time" doc:"What can turn a screw pin that is not secured: a load that is turned while it hangs, or time. Absent where the plan does not give the kind of pin. Concerns shackles."`
	PinKind              *string     `json:"pin_kind,omitempty" enum:"screw,bolt,round" doc:"Kind of pin. Concerns shackles."`
	TemperatureGiven     bool        `json:"temperature_given" doc:"Whether the plan gives the temperature of the gear."`
	LowestC              *float64    `json:"lowest_c,omitempty" doc:"How cold it gets. Absent where the plan gives no temperature."`
	HighestC             *float64    `json:"highest_c,omitempty" doc:"How hot it gets. Absent where the plan gives no temperature."`
	EyeKinds             []string    `json:"eye_kinds" enum:"flemish_sleeve,turn_back_sleeve,hand_tucked,hidden_tuck,socket,clipped,knotted,not_given" doc:"How its eyes are made; not_given stands for an eye of which the plan does not say. Empty for what has no eyes."`
	TagNamesDesignFactor bool        `json:"tag_names_design_factor" doc:"Whether its tag can be read and names a design factor."`
	TagNamesMake         bool        `json:"tag_names_make" doc:"Whether its tag can be read and names a diameter, size, grade, material, width or length of what it is on."`
	TagNamesChoker       bool        `json:"tag_names_choker_rating" doc:"Whether it is a sling whose own tag can be read and shows a rated load for a choke."`
	TagNamesBasket       bool        `json:"tag_names_basket_rating" doc:"The same for a basket."`
	RatedAgainst         string      `json:"rated_against" enum:"rope_like_it,strongest_rope,nothing" doc:"What the rated load of one leg on its own tag is held against: what a sling of such rope or chain is rated for by its strength, or a grommet by its breaking load; the same of the strongest rope of its diameter or chain of its size, where the plan gives no grade or no strength is known for such; nothing, where no tag of its own rates one leg, and of fabric and mesh."`
	RatedRatio           *float64    `json:"rated_over_believable_ratio,omitempty" doc:"What its tag rates one leg for over what a sling of such rope is rated for; of a bridle, for its weakest leg. Concerns gear that is held against rope like it."`
	RatedOverBestRatio   *float64    `json:"rated_over_strongest_ratio,omitempty" doc:"The same over the strongest rope. Concerns gear that is held against the strongest rope."`
	SectionHeld          bool        `json:"section_held" doc:"Whether the plan gives what it is rated for and a section that has to bear that: the bow or the pin of a shackle, the section of a link, the eye or the bowl of a hook, an end of a part in line, width and thickness of webbing, a round sling or mesh. Not of a sling that is held against rope or chain."`
	Section              *string     `json:"section,omitempty" doc:"The section that could be rated for the least, in words, as in its bow. Concerns gear with such a section."`
	RatedOverSection     *float64    `json:"rated_over_section_ratio,omitempty" doc:"What it is rated for over the most that this section could be, taken stronger than any that is made and with the least of design factors. Concerns gear with such a section."`
	BreakingLoadGiven    bool        `json:"breaking_load_given" doc:"Whether the plan gives a breaking load of it, which it can of grommets."`
	BreakingRatio        *float64    `json:"breaking_over_strongest_ratio,omitempty" doc:"That breaking load over what as many parts of the strongest rope as thick as its body hold. Concerns grommets with a breaking load."`
	ChokerRatio          *float64    `json:"choker_over_vertical_ratio,omitempty" doc:"What its own tag rates it for in a choke over what it rates one straight leg for. Concerns a sling whose tag can be read and shows both."`
	BasketRatio          *float64    `json:"basket_over_vertical_ratio,omitempty" doc:"The same in a basket, both parts together."`
	ChainGrade           string      `json:"chain_grade" enum:"43,70,80,100,120,not_given,none" doc:"Grade of a chain sling; none for what is no chain."`
	Mesh                 string      `json:"mesh" enum:"coated,bare,not_given,none" doc:"Whether the mesh of a mesh sling is coated; none for what is no mesh."`
	Fabric               string      `json:"fabric" enum:"polyester,nylon,polypropylene,hmpe,aramid,not_given,none" doc:"What webbing, or what bears in a round sling, is made of; none for other gear."`
	GrommetCore          string      `json:"grommet_core" enum:"fiber,iwrc,not_given,none" doc:"The core of a grommet's rope; none for other gear."`
	GrommetSleeve        string      `json:"grommet_sleeve" enum:"steel,aluminum,not_given,none" doc:"The metal of a grommet's sleeve; none where it has none, and for other gear."`
	Steel                string      `json:"steel" enum:"carbon,alloy,grade_8,grade_10,grade_12,not_given,none" doc:"The series that the plan names of a shackle, link, hook or fitting in line; none for other gear."`
	OfChain              bool        `json:"of_chain" doc:"Whether it is a chain sling or a bridle whose legs are of chain."`
	ChainHeld            string      `json:"chain_held" enum:"80,100,120,none" doc:"The highest grade of alloy chain that a link or a hook holds, as the grade of a chain sling; none for other gear and where it holds no such chain."`
	SteelAgainstChain    string      `json:"steel_against_chain" enum:"as_good,weaker,not_given,no_chain" doc:"Whether the series that the plan names of a link or a hook is at least that of the chain it holds."`
	LookedOver           bool        `json:"looked_over" doc:"Whether the plan says what is seen on it, nothing included. Of a bridle it says so of its parts."`
	FaultsSeen           []string    `json:"faults_seen" enum:"knot,kink,crushed,birdcage,heat,repair,stretched,worn,bent_link,cracked,cut,abraded,burned,melted,chemical,stitching,sunlight,cover_cut,core_exposed,broken_weld,broken_wire,bent,corroded,opened,twisted,threads,wrong_pin,loose" doc:"What is seen on it that puts it out of service."`
	SeenOn               SeenOn      `json:"seen_on" doc:"Where that is said."`
	Tag                  Tag         `json:"tag" doc:"What its tag shows."`
	Inspection           *Inspection `json:"inspection,omitempty" doc:"Its last periodic inspection, or that of its bridle where it is inspected with that. Absent where none is recorded."`
}

// SeenOn is where it is said what is seen on an item.
type SeenOn struct {
	At string `json:"at" doc:"Where it stands; the item where nothing is said."`
}

// Tag is what the identification on a sling or fitting shows.
type Tag struct {
	At           string   `json:"at" doc:"Where it stands in the plan."`
	State        string   `json:"state" enum:"legible,illegible,missing,not_recorded" doc:"Whether it can be read; not_recorded where the plan says nothing of a tag."`
	DisagreesIn  *string  `json:"disagrees_in,omitempty" enum:"none,diameter,component diameter,size,grade,material,width,length" doc:"The first of what it names of the sling, or of all legs of a bridle, in which it disagrees with the plan; a diameter or width by more than 3 %, the size of a chain by more than 5 %, a length by more than 5 %. Absent where the plan does not give what it names. Does not concern a tag that names none of these."`
	DesignFactor *float64 `json:"design_factor,omitempty" doc:"Breaking strength over rated load, as it shows. Does not concern a tag that names none."`
	Shows        []string `json:"shows" enum:"maker,serial,diameter,component_diameter,size,width,length,material,grade,rated_load,choker_rated_load,basket_rated_load,hitch,angle_from_horizontal,legs,rated_for,design_factor" doc:"The fields that can be read on it."`
}

// Inspection is the last one on record and when the next is due. Where periodic
// inspections and thorough examinations are both on record it is the one whose next
// is due first.
type Inspection struct {
	At          string   `json:"at" doc:"Where it stands in the plan."`
	Named       string   `json:"named" doc:"What it is called: a periodic inspection or a thorough examination."`
	Date        string   `json:"date" doc:"Day of the last inspection, year-month-day."`
	Due         *string  `json:"due,omitempty" doc:"Last day on which it still holds, year-month-day."`
	Because     string   `json:"because" doc:"Why the due day is not that on the record, in words with a comma before them; empty where it is, or the record gives none."`
	OverdueDays *float64 `json:"overdue_days,omitempty" doc:"Days by which the lift comes after the due day; zero or less while it holds. Absent where the inspection comes after the lift."`
}

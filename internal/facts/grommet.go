package facts

// Grommet is an endless sling of wire rope that is used, and how it lies on what
// it bears on.
type Grommet struct {
	Record
	ID             string   `json:"id" doc:"Its number in the plan."`
	Laid           string   `json:"laid" enum:"strand_laid,cable_laid,not_given" doc:"How it is laid up."`
	Doubled        bool     `json:"doubled" doc:"Whether it is laid double between its bearings."`
	Hitch          string   `json:"hitch" enum:"straight,basket,choke" doc:"The hitch it is used in."`
	DiameterM      *float64 `json:"diameter_m,omitempty" doc:"Diameter of the finished body."`
	ComponentM     *float64 `json:"component_diameter_m,omitempty" doc:"Diameter of the rope that it is laid of. Concerns one that is cable-laid."`
	BodyAgrees     *string  `json:"body_over_components_agrees,omitempty" enum:"yes,no" doc:"Whether body and rope, as given, can both be right: six ropes round one are three ropes thick, to 15 %. Concerns one that is cable-laid."`
	CircumferenceD *float64 `json:"circumference_d,omitempty" doc:"Its circumference in diameters of the body."`
	SpliceGiven    bool     `json:"splice_given" doc:"Whether the plan says where its tuck or sleeve is."`
	SpliceFromD    *float64 `json:"splice_from_bearing_d,omitempty" doc:"Distance of its tuck or sleeve from the middle of the nearest bearing, along the body, in its diameters. Concerns one of which the plan says where that is, other than in a choke."`
	Sleeve         string   `json:"sleeve" enum:"none,steel,aluminum,not_given" doc:"The metal of its sleeve."`
	UpperOn        string   `json:"upper_on" doc:"What its upper end bears on."`
	UpperBendD     *float64 `json:"upper_bend_d,omitempty" doc:"Thickness of that in diameters of the body."`
	LowerOn        string   `json:"lower_on" doc:"What its lower end bears on; the body of the load of one in a basket or a choke."`
	LowerBendD     *float64 `json:"lower_bend_d,omitempty" doc:"Thickness of that in diameters of the body. Concerns one that pulls straight."`
}

package facts

// Hitch is a sling that lies round a body of the load, or runs through a point or
// over a sheave.
type Hitch struct {
	Record
	ID                  string   `json:"id" doc:"The leg it is in."`
	Sling               string   `json:"sling" doc:"The sling that makes it."`
	SlingKind           string   `json:"sling_kind" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling" doc:"What that is."`
	RopeClass           string   `json:"rope_class" enum:"6x7,6x19,6x36,6x37,8x19,8x36,19x7,35x7,not_given,none" doc:"Class of its rope; none for what is no rope."`
	RopeCore            string   `json:"rope_core" enum:"fiber,iwrc,not_given,none" doc:"Core of its rope; none for what is no rope."`
	Kind                string   `json:"kind" enum:"basket,choke,over_sheave" doc:"What it is."`
	Round               string   `json:"round" doc:"The body, the point or the sheave that it goes round or through."`
	On                  string   `json:"on" enum:"round_body,body_with_corners,point,sheave" doc:"What that is."`
	Turns               int      `json:"turns" doc:"How often it goes round a body; 1 where it goes through a point or over a sheave."`
	EndsApart           bool     `json:"ends_apart" doc:"Whether its two ends go to two points."`
	BodyWidthM          *float64 `json:"body_width_m,omitempty" doc:"Diameter of a round body, the least of width and height of one with corners, thickness of a point, or diameter of a sheave."`
	BodyOverRopeRatio   *float64 `json:"body_over_rope_ratio,omitempty" doc:"Diameter that the sling is bent round over its own size: that of the body or the sheave, the thickness of a point, or twice the radius of corners, over what softens them where that is given; over the diameter of the rope, of a braided sling that of its component, over the size of a chain, or over the thickness of a flat sling."`
	BentOverM           *float64 `json:"bent_over_m,omitempty" doc:"The diameter that it is bent round: that of the body or the sheave, the thickness of a point, or twice the radius of corners, over what softens them where that is given."`
	EdgeRadiusM         *float64 `json:"edge_radius_m,omitempty" doc:"The radius of the corners that it bends over, over what softens them where that is given. Concerns a body with corners."`
	SizeM               *float64 `json:"sling_size_m,omitempty" doc:"What bends of it are counted by: diameter of the rope, of a braided sling that of its component, size of a chain, thickness of a flat sling."`
	PerimeterD          *float64 `json:"perimeter_d,omitempty" doc:"Once round the body, in diameters of the finished rope, sizes of the chain or thicknesses of the sling. Concerns a choke."`
	EdgeSharp           *bool    `json:"edge_sharp,omitempty" doc:"Whether the corners are sharp for such a sling, as they are without protection: for rope and chain under one diameter or size in radius, for fabric under three thicknesses, for mesh under six. Concerns a body with corners."`
	EdgesProtected      bool     `json:"edges_protected" doc:"Whether the plan says that corners are softened."`
	SoftenerSecured     string   `json:"softener_secured" enum:"yes,no,not_given,none" doc:"Whether what softens the edges is kept from falling or slipping away; none where nothing does."`
	PinIn               string   `json:"pin_in" enum:"eye,running_part,not_given,none" doc:"What the pin of the shackle that closes a choke is in; none where there is none."`
	Phase               *string  `json:"phase,omitempty" doc:"The phase in which the choke angle is least, or a basket is nearest to slipping or pulls the most unequally. Concerns a lift in phases."`
	LeanPhase           *string  `json:"lean_phase,omitempty" doc:"The phase in which it leans the most along the body. Concerns a lift in phases."`
	ChokeAngleDeg       *float64 `json:"choke_angle_deg,omitempty" doc:"Angle between the standing part and the loop: as the plan sets it, and no more than the pull leaves of it; the least in any phase. Concerns a choke."`
	ChokeAngleGiven     bool     `json:"choke_angle_given" doc:"Whether the plan sets it."`
	ChokeLands          *string  `json:"choke_lands,omitempty" enum:"on_rope,on_eye_or_splice" doc:"Where the standing part bears in the choke; on_rope too for chain and for slings that are endless. Concerns a choke."`
	SpliceLies          *string  `json:"splice_lies,omitempty" enum:"free,on_body" doc:"Whether the eyes of a basket's sling with their splices lie free of what it goes round, or one lies on it. Concerns a basket."`
	ForceRatio          *float64 `json:"force_ratio,omitempty" doc:"Greater over lesser force of the two runs of a basket; the most in any phase. Concerns a basket."`
	HoldsRatio          *float64 `json:"friction_holds_ratio,omitempty" doc:"The greatest such ratio that friction holds: e to the friction times the angle it is turned through. Concerns a basket round a body."`
	SlipsRatio          *float64 `json:"slips_ratio,omitempty" doc:"The one over the other; over 1 it slides round the body. Concerns a basket round a body."`
	LeanDeg             *float64 `json:"lean_along_body_deg,omitempty" doc:"How far its runs lean along the body from straight across it, the most in any phase. Concerns a sling round a body."`
	FrictionNeededRatio *float64 `json:"friction_needed_over_given_ratio,omitempty" doc:"Friction that keeps it from sliding along the body, over what the surface gives: over 1 it slides. Concerns a basket round a body."`
	Surface             string   `json:"surface" enum:"dry_steel,wood,wet_or_oily,not_given,none" doc:"What the sling bears on; none where it is no body of the load."`
	HeldAgainstSliding  bool     `json:"held_against_sliding" doc:"Whether the plan says what keeps it from sliding along the body."`
	LegsOnLoad          int      `json:"legs_on_load" doc:"Number of legs that hold the load in all."`
	LoadTilts           bool     `json:"load_tilts" doc:"Whether the load is meant to be tilted or turned while it hangs."`
	BodyLengthM         *float64 `json:"body_length_m,omitempty" doc:"Length of the body. Concerns a sling round a body."`
}

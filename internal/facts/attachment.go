package facts

// Attachment is a point on the load that a leg can take.
type Attachment struct {
	Record
	ID         string   `json:"id" doc:"Its name in the plan."`
	Named      string   `json:"named" doc:"What it is called: attachment and its name, or point and its name where it is one of a beam."`
	Kind       string   `json:"kind" enum:"padeye,eyebolt,hoist_ring,insert" doc:"What it is; a point of a beam is a padeye."`
	OnBeam     bool     `json:"on_beam" doc:"Whether it is a point of a beam, and not of the load."`
	Spare      bool     `json:"spare" doc:"Whether the plan says that it is left free on purpose."`
	Legs       int      `json:"legs" doc:"Number of legs that go to it."`
	PullN      *float64 `json:"pull_n,omitempty" doc:"Force that its legs put on it, their forces added up as if they pulled one way."`
	Phase      *string  `json:"phase,omitempty" doc:"The phase in which that is greatest; absent where its legs pull the most in several. Concerns a lift in phases."`
	RatedLoadN *float64 `json:"rated_load_n,omitempty" doc:"What it is rated for as marked. Does not concern an insert, which has a breaking load."`

	PullAngleFromHorizontalDeg *float64 `json:"pull_angle_from_horizontal_deg,omitempty" doc:"The flattest pull of its legs, from the load's own horizontal. Concerns one that a leg goes to."`
	RatedToHorizontalGiven     bool     `json:"rated_to_horizontal_given" doc:"Whether the plan says how flat a pull it is rated for."`
	RatedToHorizontalDeg       *float64 `json:"rated_to_angle_from_horizontal_deg,omitempty" doc:"The flattest pull, from the load's horizontal, that it is rated for. Does not concern one of which the plan says nothing."`

	OutOfPlaneDeg     *float64 `json:"out_of_plane_deg,omitempty" doc:"The largest angle between the pull of one of its legs and the plane of its plate or eye. Concerns padeyes and eyebolts that a leg goes to."`
	RatedToPlaneGiven bool     `json:"rated_to_plane_given" doc:"Whether the plan says how far out of its plane it is rated for."`
	RatedToPlaneDeg   *float64 `json:"rated_to_angle_from_plane_deg,omitempty" doc:"The side pull, from its plane, that it is rated for. Does not concern one of which the plan says nothing."`

	OffAxisDeg     *float64 `json:"off_axis_deg,omitempty" doc:"The largest angle between the pull of one of its legs and the axis of its bolt. Concerns eyebolts and hoist rings that a leg goes to."`
	RatedToAxisDeg *float64 `json:"rated_to_angle_from_axis_deg,omitempty" doc:"How far from its axis it is rated for. Concerns hoist rings."`
	Pattern        *string  `json:"pattern,omitempty" enum:"plain,shouldered" doc:"Whether an eyebolt has a shoulder. Concerns eyebolts."`
	Seated         *string  `json:"seated,omitempty" enum:"seated,not_seated,has_no_seat" doc:"Whether its shoulder or base bears tight on the load; a plain eyebolt has none. Concerns eyebolts and hoist rings."`

	Panel                 *string  `json:"panel,omitempty" enum:"tilt_up,other" doc:"What an insert is cast into. Concerns inserts."`
	BreakingTimes         *float64 `json:"breaking_over_pull_times,omitempty" doc:"Breaking load of an insert over the pull on it. Concerns inserts that a leg goes to."`
	HardwareBreakingTimes *float64 `json:"hardware_breaking_over_pull_times,omitempty" doc:"Breaking load of the hardware in an insert over the pull on it. Concerns inserts that a leg goes to."`
	ConcreteStrengthPa    *float64 `json:"concrete_strength_pa,omitempty" doc:"Strength of the concrete at the lift. Concerns inserts."`
	ConcreteNeededPa      *float64 `json:"concrete_strength_needed_pa,omitempty" doc:"Strength of the concrete for which the breaking load holds. Concerns inserts."`
}

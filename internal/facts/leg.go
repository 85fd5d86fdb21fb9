package facts

// Leg is one leg of the rigging as it hangs.
type Leg struct {
	Record
	ID                     string   `json:"id" doc:"Support and number, as in hook/1."`
	From                   string   `json:"from" doc:"The support it hangs from."`
	To                     string   `json:"to" doc:"The attachment, the point of a beam or the body it goes to."`
	Holds                  string   `json:"holds" doc:"What it holds: load, or the id of a beam."`
	Hitch                  string   `json:"hitch" enum:"straight,basket,choke,over_sheave" doc:"How it holds: straight to a point; by a sling that goes through a point or round a body and up again; choked on a body; or by a sling that runs over a sheave to two points."`
	Runs                   int      `json:"runs" doc:"Number of straight runs of its sling: two of a basket and over a sheave. Force and angle are those of the run where they are worst."`
	Doubled                bool     `json:"doubled" doc:"Whether its sling is laid double between its bearings."`
	PartsTakenEqual        bool     `json:"parts_taken_equal" doc:"Whether the parts of a sling that is laid double are taken to carry alike, as the profile has it."`
	Alone                  bool     `json:"alone" doc:"Whether it is the only leg that holds the load, and straight or choked: the load can turn below it."`
	HandTucked             bool     `json:"hand_tucked" doc:"Whether a sling in it has hand-tucked splices at both ends, which turning undoes."`
	TurningHeld            bool     `json:"turning_held" doc:"Whether the plan says what keeps the load from turning."`
	EyesOnPlatesAbove      int      `json:"eyes_on_plates_above" doc:"Number of upper ends of its slings that are put straight on a plate of a beam, with no fitting between; a basket has two upper ends."`
	EyeToEye               int      `json:"eye_to_eye" doc:"Number of places where one sling is put straight into another, with no fitting between."`
	EndsIn                 string   `json:"ends_in" enum:"wire_rope_sling,grommet,chain_sling,web_sling,round_sling,mesh_sling,shackle,hook,load_cell,turnbuckle,adjuster,swivel" doc:"Kind of its lowest part, which goes to the attachment."`
	EndsAt                 string   `json:"ends_at" enum:"padeye,eyebolt,hoist_ring,insert,beam,body" doc:"Kind of the attachment it goes to; a point of a beam, or a body of the load that its sling goes round."`
	Split                  string   `json:"split" enum:"settled_by_statics,settled_by_stiffness" doc:"What settles the forces in the legs: statics alone, or stiffness and exact lengths too, as from four legs on and for legs in one plane."`
	LengthM                *float64 `json:"length_m,omitempty" doc:"Length from the support's bearing point to the attachment's."`
	Slack                  *bool    `json:"slack,omitempty" doc:"Whether it carries nothing."`
	AngleFromHorizontalDeg *float64 `json:"angle_from_horizontal_deg,omitempty" doc:"Its angle as it hangs. Absent where it is slack."`
	TensionN               *float64 `json:"tension_n,omitempty" doc:"Force in it with its length and stretch as given."`
	TensionAtWorstN        *float64 `json:"tension_at_worst_n,omitempty" doc:"The most force in it with the center of gravity within its tolerance; its own force where there is none."`
	WorstCorner            *string  `json:"worst_corner,omitempty" doc:"Where the center of gravity lies then. Concerns legs that carry more there."`
	TensionPhase           *string  `json:"tension_phase,omitempty" doc:"The phase in which its own force is greatest. Concerns a lift in phases."`
	FlattestPhase          *string  `json:"flattest_phase,omitempty" doc:"The phase in which it hangs flattest. Concerns a lift in phases."`
	FlattestNamed          string   `json:"flattest_named" doc:"What it is called where its angle is told: its name, and that phase of a lift in phases, as in hook/1 in phase turning at 30 deg."`
	SlackNamed             string   `json:"slack_named" doc:"The same where it is told that it is slack: its name, what it goes to, and the phase in which it is slack."`
	SlackPhase             *string  `json:"slack_phase,omitempty" doc:"The first phase in which it is slack. Concerns a lift in phases."`
	LengthOpen             bool     `json:"length_open" doc:"Whether the plan leaves the length of its sling open and gives the height of what it hangs from."`
	LengthNeededM          *float64 `json:"length_needed_m,omitempty" doc:"Length that its sling needs, bearing to bearing, for the load to hang as intended. Concerns legs whose sling is left open."`
	LevelLengthM           *float64 `json:"level_length_m,omitempty" doc:"Its length with which, and with those of the other legs, the load would hang as intended, the hook plumb over its center of gravity and as high above the load as it is. Concerns straight legs from one hook, all of them."`
	ShareRatio             *float64 `json:"share_ratio,omitempty" doc:"Its own force over the mean of all legs' own forces."`
	TensionBoundN          *float64 `json:"tension_bound_n,omitempty" doc:"The most it can be made to carry by differences of length, where stiffness settles the split; statics alone leaves no choice."`
	BoundBy                *string  `json:"bound_by,omitempty" enum:"any_lengths,length_tolerance" doc:"Which differences those are: any, or those within the tolerance that the plan gives of every sling. Concerns a leg with a bound."`
	TensionCountedN        *float64 `json:"tension_counted_n,omitempty" doc:"Force in it if only as many legs carry as the profile counts, where stiffness settles the split."`
	TensionJudgedN         *float64 `json:"tension_judged_n,omitempty" doc:"What its parts are judged by: the greatest of its own force, at worst, and of what the profile lets decide besides: the counted force or the bound."`
	JudgedBy               *string  `json:"judged_by,omitempty" enum:"own_force,own_force_at_worst,legs_counted,bound" doc:"Which of these that is."`
	JudgedPhase            *string  `json:"judged_phase,omitempty" doc:"The phase in which the force that its parts are judged by is greatest. Concerns a lift in phases."`
	WeakestPart            *string  `json:"weakest_part,omitempty" doc:"Its part that is used the most, its end among them; the first of several. Absent unless that of every part is known."`
	MarginRatio            *float64 `json:"margin_ratio,omitempty" doc:"What that part has left, 1 being all of its rated load; less than 0 where it is overloaded."`
	PlanDirectionDeg       *float64 `json:"direction_in_plan_deg,omitempty" doc:"Direction in which it goes down and away from what it hangs from, seen from above: from the load's x axis toward its y axis. 0 for a plumb leg."`
	PullAlongN             *float64 `json:"pull_along_n,omitempty" doc:"How much it pulls on its end along the x axis of what it holds; the load's own axes, or the beam's."`
	PullAcrossN            *float64 `json:"pull_across_n,omitempty" doc:"The same along the y axis."`
	PullUpN                *float64 `json:"pull_up_n,omitempty" doc:"The same along the z axis."`
	ThrustN                *float64 `json:"thrust_n,omitempty" doc:"Horizontal part of its own force, which squeezes the load."`
	AngleStated            bool     `json:"angle_stated" doc:"Whether the plan states the angle at which it is meant to hang."`
	StatedAngleDeg         *float64 `json:"stated_angle_from_horizontal_deg,omitempty" doc:"The angle from horizontal that the plan states. Does not concern a leg without."`
	StatedAngleOffDeg      *float64 `json:"stated_angle_off_deg,omitempty" doc:"By how much it hangs otherwise than stated. Does not concern a leg without a stated angle."`
	Slings                 int      `json:"slings" doc:"Number of slings of wire rope in it, grommets aside."`
	LaysJoined             *string  `json:"lays_joined,omitempty" enum:"alike,unlike" doc:"Whether right- and left-lay slings follow each other. Concerns a leg of two slings and more."`
	SteelsNamed            int      `json:"steels_named" doc:"Number of its fittings of which the plan names the steel."`
	SteelsMixed            bool     `json:"steels_mixed" doc:"Whether fittings of unlike series are in it, as far as the plan names their steel."`
	SwivelInLine           string   `json:"swivel_in_line" enum:"no,load_bearing,not_given" doc:"Whether a swivel that turns under load is in it together with an ordinary rope, which turning unlays; no without either. not_given: a swivel of which the plan does not say whether it turns under load."`
	TagNamesAngle          bool     `json:"tag_names_angle" doc:"Whether the tag of its bridle rates all legs together at an angle, from which statics leads to others."`
	TagAngleDeg            *float64 `json:"tag_angle_from_horizontal_deg,omitempty" doc:"That angle. Concerns a leg of such a bridle."`
	RatedByBand            bool     `json:"rated_by_band" doc:"Whether the tag of its sling or bridle holds for a band of angles, beyond which it may not be used."`
	BandLeastDeg           *float64 `json:"band_least_from_horizontal_deg,omitempty" doc:"The flattest angle from horizontal of that band. Concerns a leg that is rated by band."`
}

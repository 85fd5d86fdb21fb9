// Package facts holds the one document that rules see: what the plan says and
// what was computed from it, in SI numbers with the unit in each name.
//
// Every field is a list of records. Every record has a Key, unique in the
// plan, and an At: the URI fragment of the place it stands for. What is not
// known is absent (a nil pointer), never zero and never null.
package facts

// Document is the whole of the facts of one plan.
type Document struct {
	Lifts       []Lift       `json:"lifts" doc:"The lift itself: one record."`
	Loads       []Load       `json:"loads" doc:"What is lifted and how it hangs."`
	Hooks       []Hook       `json:"hooks" doc:"Crane hooks."`
	Attachments []Attachment `json:"attachments" doc:"Points on the load that legs can take."`
	Gear        []Gear       `json:"gear" doc:"Slings and fittings by their number."`
	OnFile      []OnFile     `json:"on_file" doc:"Each sling or fitting that the plan takes from a gear register: what the register has on it."`
	Signs       []Sign       `json:"signs" doc:"Each thing that inspections of gear on file looked for: the worst on record that no later record takes back."`
	Doubtful    []Doubtful   `json:"doubtful_records" doc:"Each record of an inspection of gear on file that leaves open what it comes to, and one for each item that has none of those."`
	Ropes       []Rope       `json:"ropes" doc:"Each wire rope sling that is used: its rope and how it is made."`
	Grommets    []Grommet    `json:"grommets" doc:"Each grommet that is used, and how it lies on what it bears on."`
	Bridles     []Bridle     `json:"bridles" doc:"Each bridle that is used: legs and links under one tag."`
	Legs        []Leg        `json:"legs" doc:"Each leg that carries, from a support to its end, as it hangs."`
	Parts       []Part       `json:"parts" doc:"Each piece in the way of the force: what it sees and what it may carry."`
	Factors     []Factor     `json:"factors" doc:"Each thing that makes what a part may carry differ from what is marked on it, of parts whose rated load as used is known."`
	Fits        []Fit        `json:"fits" doc:"Each place where one part goes over or into another."`
	Bearings    []Bearing    `json:"bearings" doc:"Each end of a sling of webbing or of a round sling on the hook or fitting that it bears on."`
	Gathers     []Gather     `json:"gathers" doc:"Each link, bow, pin or hook that two legs and more come together in."`
	HookUses    []HookUse    `json:"hook_uses" doc:"Each hook, of the crane or of a sling, with what hangs in it."`
	Beams       []Beam       `json:"beams" doc:"Each spreader beam, lifting beam and rocker plate that is used, and the forces in it."`
	Hitches     []Hitch      `json:"hitches" doc:"Each sling that lies round a body of the load, or runs through a point or over a sheave."`
	Positions   []Position   `json:"positions" doc:"Each leg in each phase of the lift, for people; of a lift in one attitude there are none."`
}

// Record is what every kind of record has.
type Record struct {
	Key string `json:"key" doc:"Stable and unique in the plan."`
	At  string `json:"at" doc:"Where it stands in the plan, as a URI fragment."`
}

// Lift is the plan's head and the conditions it is judged under.
type Lift struct {
	Record
	ID            string   `json:"id" doc:"The plan's number."`
	Title         string   `json:"title" doc:"What the lift is."`
	Category      string   `json:"category" enum:"routine,critical" doc:"How the plan classes the lift; routine where it says nothing."`
	Profile       string   `json:"profile" doc:"Whose practice the plan is judged by."`
	Stage         string   `json:"stage" enum:"draft,review,prelift" doc:"How far the plan has come."`
	Date          *string  `json:"date,omitempty" doc:"The day the plan is judged for, year-month-day."`
	Legs          int      `json:"legs" doc:"Number of legs that carry the load."`
	Labels        []string `json:"labels" doc:"A company's own labels of the lift, each as label=value."`
	LegsUnlike    Unlike   `json:"legs_unlike" doc:"Two slings of the legs of one support that are unlike."`
	NotLookedOver OfGear   `json:"not_looked_over" doc:"The gear in use of which neither the plan says what is seen on it, nor its register that somebody who is named found it fit on the day of the lift."`
	LegsThatCount int      `json:"legs_that_count" doc:"Where stiffness settles the split, how many legs the profile takes to carry the load; 0 where it does not go by a number of legs."`
}

// OfGear are pieces of gear that have something in common.
type OfGear struct {
	At  string   `json:"at" doc:"Where the first of them stands in the plan; the head of the plan where there is none."`
	IDs []string `json:"ids" doc:"Their numbers in the plan."`
}

// Unlike are two slings that are unlike in kind, material, diameter, class or core, as
// far as these are given.
type Unlike struct {
	At  string `json:"at" doc:"Where the second of them stands in the plan; the head of the plan where all are alike."`
	How string `json:"how" doc:"Which they are and in what they are unlike, in words; empty where all are alike."`
}

// Load is the body that hangs.
type Load struct {
	Record
	MassKg             *float64 `json:"mass_kg,omitempty" doc:"Mass as the plan gives it."`
	MassUpperKg        *float64 `json:"mass_upper_kg,omitempty" doc:"Mass at the upper end of its tolerance: what is computed with."`
	MassKnownBy        *string  `json:"mass_known_by,omitempty" enum:"weighed,documented,calculated,estimated" doc:"How the mass is known."`
	Freed              bool     `json:"freed" doc:"Whether the plan says how it is known that nothing holds the load down."`
	StrengthConfirmed  bool     `json:"strength_confirmed" doc:"Whether the plan says who or what confirms that the load itself bears the lift."`
	Contents           string   `json:"contents" enum:"none,secured,loose,not_given" doc:"Whether anything in it or on it can move."`
	Hazard             string   `json:"hazard" enum:"none,with_precaution,without_precaution,not_given" doc:"Whether what is in it is hazardous, and what is done about it; none where nothing is in it."`
	SizeGiven          bool     `json:"size_given" doc:"Whether the plan gives its size."`
	CenterOutsideM     *float64 `json:"center_outside_m,omitempty" doc:"How far the center of gravity lies outside the load's size, which is measured from the datum corner to the side on which attachments and bodies lie; zero inside. Does not concern a load without size."`
	HookAboveM         *float64 `json:"hook_above_points_m,omitempty" doc:"Height of the crane hook's bearing above the highest place where a leg holds the load, as it hangs; of several hooks, of the highest, and the most in any phase."`
	ThrustN            *float64 `json:"thrust_n,omitempty" doc:"The greatest horizontal part of a leg's force, which squeezes the load."`
	FlattestLegDeg     *float64 `json:"flattest_leg_from_horizontal_deg,omitempty" doc:"Angle from horizontal of its flattest leg that is not slack."`
	MassToleranceGiven bool     `json:"mass_tolerance_given" doc:"Whether the plan gives a tolerance of the mass; where it does not, mass_upper_kg is mass_kg."`
	MassToleranceRatio *float64 `json:"mass_tolerance_ratio,omitempty" doc:"Tolerance of the mass, 1 being the whole mass."`
	MostUsedRatio      *float64 `json:"most_used_ratio,omitempty" doc:"The highest used_ratio of all parts. Absent unless that of every part is known."`
	MostUsedPart       *string  `json:"most_used_part,omitempty" doc:"The part that it is of and where that works, as in S1 in hook/1; the first of several."`
	Hangs              *string  `json:"hangs,omitempty" enum:"steady,rocks,overturns,points_below_center_of_gravity" doc:"Whether it hangs as intended, can rock between slack legs, or turns over. Absent where it could not be computed."`
	Corners            int      `json:"corners" doc:"At how many corners of the tolerances it was hung, besides as the plan has it."`
	HangsAtWorst       *string  `json:"hangs_at_worst,omitempty" enum:"steady,rocks,overturns,points_below_center_of_gravity,does_not_balance" doc:"How it hangs at the first corner of the tolerances where it does not hang steady; the same as hangs where there is none."`
	WorstCorner        *string  `json:"worst_corner,omitempty" doc:"What is where then, in words. Concerns a load that does not hang steady there."`
	TiltAtWorstDeg     *float64 `json:"tilt_at_worst_deg,omitempty" doc:"The largest tilt within the tolerances; the same as tilt_deg where there are none."`
	TiltDeg            *float64 `json:"tilt_deg,omitempty" doc:"Angle between the load as it hangs and as it is meant to hang. Absent where it turns over."`
	PitchDeg           *float64 `json:"pitch_from_horizontal_deg,omitempty" doc:"Angle of its x axis from horizontal as it hangs, positive where that end is up; of the position in which it is tilted the most."`
	RollDeg            *float64 `json:"roll_from_horizontal_deg,omitempty" doc:"The same of its y axis."`
	RightingM          *float64 `json:"righting_m,omitempty" doc:"Least moment that rights the load when it is turned, per radian, over its weight: the length of a pendulum equally steady. Absent where it turns over."`
	PlumbOffsetM       *float64 `json:"plumb_offset_m,omitempty" doc:"Horizontal distance between hook and center of gravity if the load kept its intended attitude."`
	MayRiseM           *float64 `json:"center_may_rise_m,omitempty" doc:"How much higher its center of gravity may lie before the load no longer rights itself, all else being the same. Absent where it turns over."`
	DropM              *float64 `json:"drop_m,omitempty" doc:"By how much its center of gravity comes to rest lower than with the load held as intended under the same hooks: what it drops when it comes free; negative where it rises."`
	SwingM             *float64 `json:"swing_m,omitempty" doc:"How far its center of gravity moves sideways as it comes free, the hooks staying where they are; under several hooks, from where it stands with the hooks over it as the plan has them."`
	HooksLeanDeg       *float64 `json:"hooks_lean_from_plumb_deg,omitempty" doc:"The largest angle from plumb of the force on one of its hooks, as the plan has it and in any phase: how far a hoist rope is pulled aside."`
	HangsFrom          string   `json:"hangs_from" enum:"one_hook,several_hooks" doc:"Whether it hangs from one hook or from several."`
	Phases             int      `json:"phases" doc:"Number of positions that were looked at, one for each step of each phase; 1 for a lift in one attitude."`
	PitchStepDeg       float64  `json:"pitch_step_deg" doc:"The largest step of pitch between one position that is looked at and the next; 0 for a lift in one attitude."`
	Phase              *string  `json:"phase,omitempty" doc:"The phase in which it does not hang steady or, where it always does, is tilted the most. Concerns a lift in phases."`
	Named              string   `json:"named" doc:"What it is called where it is told that it turns over or rocks: the load, and that phase of a lift in phases, as in the load in phase turning at 30 deg."`
	TiltNamed          string   `json:"tilt_named" doc:"The same where its tilt is told, with the phase in which that is largest."`
	WorstTiltNamed     string   `json:"worst_tilt_named" doc:"The same where its tilt within the tolerances is told."`
	TurnedDeg          *float64 `json:"turned_deg,omitempty" doc:"How far it turned before it came to rest. Only where that says that it turns over."`
}

// Hook is a crane hook that legs or a link hang from.
type Hook struct {
	Record
	ID               string   `json:"id" doc:"The hook's name."`
	LoadN            *float64 `json:"load_n,omitempty" doc:"Force on the hook from the load and the rigging whose mass is given; of several hooks, the most in any phase and at any corner of the tolerances."`
	HorizontalN      *float64 `json:"horizontal_n,omitempty" doc:"The horizontal part of that, as the plan has it: what pulls the crane sideways."`
	LeanDeg          *float64 `json:"lean_from_plumb_deg,omitempty" doc:"Angle from plumb of the force on it, as the plan has it: how far its rope is pulled aside; the most in any phase."`
	LeanPhase        *string  `json:"lean_phase,omitempty" doc:"The phase in which that is. Concerns a lift in phases."`
	LeanNamed        string   `json:"lean_named" doc:"What it is called where that is told: its name, and that phase of a lift in phases."`
	Phase            *string  `json:"phase,omitempty" doc:"The phase in which it carries the most. Concerns a lift in phases."`
	HeightGiven      bool     `json:"height_given" doc:"Whether the plan gives its height above the datum and leaves no length of its legs open."`
	HeightM          *float64 `json:"height_above_datum_m,omitempty" doc:"Height of its bearing above the load's datum corner, in the first position that is looked at; of several hooks, with the load as level as they can hang it."`
	HeightOffM       *float64 `json:"height_off_m,omitempty" doc:"By how much that differs from what the plan gives. Concerns a hook of which it gives the height."`
	OfSeveral        bool     `json:"of_several" doc:"Whether the load hangs from other hooks too."`
	RopeTakenM       float64  `json:"hoist_rope_taken_m" doc:"Free length of its hoist rope as it is taken where it is one of several hooks and the plan gives none; zero for others."`
	LegsDirect       int      `json:"legs_direct" doc:"Number of legs whose upper ends go over the hook itself, with no link between."`
	ItemsWithoutMass int      `json:"items_without_mass" doc:"Number of links, slings and shackles in use whose mass is not given and counts as zero."`
	RiggingMassKg    float64  `json:"rigging_mass_kg" doc:"Mass of the rigging below, as far as it is given."`
	BodyWidthM       *float64 `json:"body_width_m,omitempty" doc:"Width of the hook's section where an eye or a link bears."`
}

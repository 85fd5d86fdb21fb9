package facts

// Gear is one sling or fitting.
type Gear struct {
	Record
	ID                   string      `json:"id" doc:"Its number in the plan."`
	Kind                 string      `json:"kind" enum:"wire_rope_sling,shackle,master_link" doc:"What it is."`
	Uses                 int         `json:"uses" doc:"Number of places in the lift where it is used."`
	DiameterM            *float64    `json:"diameter_m,omitempty" doc:"Diameter of the rope, or of the section of a link. A shackle has none."`
	LengthM              *float64    `json:"length_m,omitempty" doc:"Length from bearing point to bearing point."`
	EyeKinds             []string    `json:"eye_kinds" enum:"flemish_sleeve,turn_back_sleeve,hand_tucked,hidden_tuck,not_given" doc:"How its eyes are made; not_given stands for an eye of which the plan does not say. Empty for what has no eyes."`
	TagNamesDesignFactor bool        `json:"tag_names_design_factor" doc:"Whether its tag can be read and names a design factor."`
	TagNamesDiameter     bool        `json:"tag_names_diameter" doc:"Whether its tag can be read and names a diameter."`
	Tag                  Tag         `json:"tag" doc:"What its tag shows."`
	Inspection           *Inspection `json:"inspection,omitempty" doc:"Its last periodic inspection. Absent where none is recorded."`
}

// Tag is what the identification on a sling or fitting shows.
type Tag struct {
	At           string   `json:"at" doc:"Where it stands in the plan."`
	State        string   `json:"state" enum:"legible,illegible,missing,not_recorded" doc:"Whether it can be read; not_recorded where the plan says nothing of a tag."`
	Diameter     *string  `json:"diameter,omitempty" enum:"agrees,differs" doc:"Whether the diameter on it is that of the plan, to 3 %. Does not concern a tag that names none."`
	DesignFactor *float64 `json:"design_factor,omitempty" doc:"Breaking strength over rated load, as it shows. Does not concern a tag that names none."`
	Shows        []string `json:"shows" enum:"maker,serial,diameter,rated_load,hitch,angle_from_horizontal,legs,design_factor" doc:"The fields that can be read on it."`
}

// Inspection is the last one on record and when the next is due.
type Inspection struct {
	At          string   `json:"at" doc:"Where it stands in the plan."`
	Date        string   `json:"date" doc:"Day of the last inspection, year-month-day."`
	Due         *string  `json:"due,omitempty" doc:"Last day on which it still holds, year-month-day."`
	OverdueDays *float64 `json:"overdue_days,omitempty" doc:"Days by which the lift comes after the due day; zero or less while it holds. Absent where the inspection comes after the lift."`
}

// Leg is one leg of the rigging as it hangs.
type Leg struct {
	Record
	ID                     string   `json:"id" doc:"Support and number, as in hook/1."`
	From                   string   `json:"from" doc:"The support it hangs from."`
	To                     string   `json:"to" doc:"The attachment it goes to."`
	EyeToEye               int      `json:"eye_to_eye" doc:"Number of places where one sling's eye is put straight into another's."`
	EndsIn                 string   `json:"ends_in" enum:"wire_rope_sling,shackle" doc:"Kind of its lowest part, which goes to the attachment."`
	EndsAt                 string   `json:"ends_at" enum:"padeye" doc:"Kind of the attachment it goes to."`
	Split                  string   `json:"split" enum:"settled_by_statics,settled_by_stiffness" doc:"What settles the forces in the legs: statics alone, or stiffness and exact lengths too, as from four legs on and for legs in one plane."`
	LengthM                *float64 `json:"length_m,omitempty" doc:"Length from the support's bearing point to the attachment's."`
	Slack                  *bool    `json:"slack,omitempty" doc:"Whether it carries nothing."`
	AngleFromHorizontalDeg *float64 `json:"angle_from_horizontal_deg,omitempty" doc:"Its angle as it hangs. Absent where it is slack."`
	TensionN               *float64 `json:"tension_n,omitempty" doc:"Force in it with its length and stretch as given."`
	ShareRatio             *float64 `json:"share_ratio,omitempty" doc:"Its own force over the mean of all legs' own forces."`
	TensionBoundN          *float64 `json:"tension_bound_n,omitempty" doc:"The most it can be made to carry by small differences of length, where stiffness settles the split; statics alone leaves no choice."`
	TensionCountedN        *float64 `json:"tension_counted_n,omitempty" doc:"Force in it if only as many legs carry as the profile counts, where stiffness settles the split."`
	TensionJudgedN         *float64 `json:"tension_judged_n,omitempty" doc:"What its parts are judged by: the greater of its own force and the counted one."`
	JudgedBy               *string  `json:"judged_by,omitempty" enum:"own_force,legs_counted" doc:"Which of the two that is."`
}

// Part is one piece in the way of the force, in one use.
type Part struct {
	Record
	ID         string   `json:"id" doc:"Its number in the plan."`
	Kind       string   `json:"kind" enum:"wire_rope_sling,shackle,master_link,padeye" doc:"What it is."`
	Where      string   `json:"where" doc:"The leg, legs or support it works in."`
	Split      string   `json:"split" enum:"settled_by_statics,settled_by_stiffness" doc:"What settles its share of the load; load_bound_n exists for settled_by_stiffness only."`
	RiggingN   float64  `json:"rigging_n" doc:"Weight of the part itself and of the rigging below it, as far as its mass is given; held in load_n and load_bound_n. Zero for an attachment."`
	JudgedBy   *string  `json:"judged_by,omitempty" enum:"own_force,legs_counted,whole_load" doc:"Which force that is: that of its leg with the lengths as given, that of the legs that the profile counts, or the weight of all."`
	LoadN      *float64 `json:"load_n,omitempty" doc:"Force it is judged by. Of an attachment, that of all its legs, added up as if they pulled one way."`
	LoadBoundN *float64 `json:"load_bound_n,omitempty" doc:"The most it can be made to carry by small differences of length, where stiffness settles the split."`
	RatedLoadN *float64 `json:"rated_load_n,omitempty" doc:"What it may carry as used."`
	UsedRatio  *float64 `json:"used_ratio,omitempty" doc:"Force over rated load."`
}

// Fit is a place where one part goes over or into another.
type Fit struct {
	Record
	What                 string   `json:"what" enum:"eye_over_hook,eye_over_link" doc:"Which kind of place it is."`
	Inner                string   `json:"inner" doc:"The part with the opening, as in S1 upper eye."`
	Outer                string   `json:"outer" doc:"The part it goes over."`
	Thimble              bool     `json:"thimble" doc:"Whether the eye has a thimble, which keeps its shape."`
	EyeLengthM           *float64 `json:"eye_length_m,omitempty" doc:"Inside length of the eye, bearing point to crotch."`
	EyeWidthM            *float64 `json:"eye_width_m,omitempty" doc:"Inside width of the eye, as given. Asked for of a thimbled eye, which keeps it; does not concern a soft one."`
	BodyWidthM           *float64 `json:"body_width_m,omitempty" doc:"Width of what the eye goes over."`
	WidthOverLengthRatio *float64 `json:"width_over_length_ratio,omitempty" doc:"Width of the body over the eye's inside length."`
	EyeIncludedAngleDeg  *float64 `json:"eye_included_angle_deg,omitempty" doc:"Angle between the two sides of the eye as it is spread."`
}

package facts

// Fit is a place where one part goes over or into another.
type Fit struct {
	Record
	What  string `json:"what" enum:"eye_over_hook,eye_over_link,eye_over_bow,eye_over_pin,eye_over_fitting,pin_in_hole,plate_in_jaw,eye_in_jaw,link_over_hook,link_in_bow,hook_in_hole" doc:"Which kind of place it is."`
	Inner string `json:"inner" doc:"The part that goes over or into the other, as in S1's upper eye."`
	Outer string `json:"outer" doc:"The part that it goes over or into."`

	Thimble              bool     `json:"thimble" doc:"Whether an eye has a thimble, which keeps its shape; false for what is no eye."`
	EyeLengthM           *float64 `json:"eye_length_m,omitempty" doc:"Inside length of the eye, bearing point to crotch. Concerns eyes over something."`
	EyeWidthM            *float64 `json:"eye_width_m,omitempty" doc:"Inside width of the eye, as given. Asked for of a thimbled eye, which keeps it; does not concern a soft one of which it is not given."`
	EyeWidthGiven        bool     `json:"eye_width_given" doc:"Whether the plan gives the inside width of the eye."`
	ThimbleSizeGiven     bool     `json:"thimble_size_given" doc:"Whether the plan gives the rope that the thimble is made for."`
	ThimbleOverRopeRatio *float64 `json:"thimble_over_rope_ratio,omitempty" doc:"Rope diameter that the thimble is made for over the sling's own. Does not concern an eye without that."`
	BodyWidthM           *float64 `json:"body_width_m,omitempty" doc:"Width of what the eye goes over. Concerns eyes over something."`
	WidthOverLengthRatio *float64 `json:"width_over_length_ratio,omitempty" doc:"Width of the body over the eye's inside length. Concerns eyes over something."`
	EyeIncludedAngleDeg  *float64 `json:"eye_included_angle_deg,omitempty" doc:"Angle between the two sides of the eye as it is spread. Concerns eyes over something."`
	BendRatio            *float64 `json:"bend_ratio,omitempty" doc:"Width of the body over the rope's diameter. Concerns eyes over something."`

	RoomM       *float64 `json:"room_m,omitempty" doc:"Width of the opening: of a hole, a jaw, a link, a bow. Concerns all but eyes over something."`
	NeedsM      *float64 `json:"needs_m,omitempty" doc:"Width of what goes into it. Concerns all but eyes over something."`
	FilledRatio *float64 `json:"filled_ratio,omitempty" doc:"Width of what goes in over that of the opening. Concerns all but eyes over something."`
	Spaced      bool     `json:"spaced" doc:"Whether spacers keep it in the middle."`
}

// Gather is a place that two legs and more come together in.
type Gather struct {
	Record
	ID   string `json:"id" doc:"The link, shackle or hook."`
	What string `json:"what" enum:"hook,link,bow,pin" doc:"What the legs bear on."`
	Legs int    `json:"legs" doc:"Number of legs that bear on it."`

	IncludedAngleDeg *float64 `json:"included_angle_deg,omitempty" doc:"The largest angle between two of the legs."`
	RoomM            *float64 `json:"room_m,omitempty" doc:"Clear width that they lie in side by side."`
	NeedsM           *float64 `json:"needs_m,omitempty" doc:"Width that they take side by side."`
	FilledRatio      *float64 `json:"filled_ratio,omitempty" doc:"Width that they take over the clear width."`
}

// HookUse is a hook with what hangs in it, or what it hangs in.
type HookUse struct {
	Record
	ID      string `json:"id" doc:"The hook's name: that of a crane's support, or the item's id."`
	Of      string `json:"of" enum:"crane,sling" doc:"Whose hook it is."`
	MadeFor string `json:"made_for" enum:"lifting,sorting,grab,foundry,j" doc:"What it is made for."`

	Latch             *string  `json:"latch,omitempty" enum:"works,faulty,none" doc:"Whether its latch closes."`
	Points            *string  `json:"points,omitempty" enum:"outward,inward" doc:"Which way the tip of a sling's hook points. Concerns hooks of slings."`
	LegsDirect        int      `json:"legs_direct" doc:"Number of legs whose eyes hang in it, with no link between; zero for a sling's hook."`
	OffAxisDeg        *float64 `json:"off_axis_deg,omitempty" doc:"The largest angle between a leg and the hook's axis. Concerns hooks that legs hang in directly."`
	ThroatM           *float64 `json:"throat_m,omitempty" doc:"Opening between tip and shank."`
	WidestM           *float64 `json:"widest_m,omitempty" doc:"Thickness of the thickest thing that has to pass through the throat into the bowl."`
	ThroatFilledRatio *float64 `json:"throat_filled_ratio,omitempty" doc:"That thickness over the throat."`
}

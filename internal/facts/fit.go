package facts

// Fit is a place where one part goes over or into another. An eye over
// something is one whose kind of place begins with eye_over; all others are
// something in an opening.
type Fit struct {
	Record
	What  string `json:"what" enum:"eye_over_hook,eye_over_link,eye_over_bow,eye_over_pin,eye_over_shackle,eye_over_fitting,pin_in_hole,pin_in_ring,bow_in_hole,eye_in_hole,plate_in_jaw,ring_in_jaw,plate_in_bow,eye_in_jaw,eye_in_opening,link_over_hook,link_in_bow,part_in_link,body_in_socket,hook_in_hole" doc:"Which kind of place it is. eye_over_shackle: over an end of a shackle of which the plan does not say where its pin is. eye_over_fitting: over the eye of a hook, or over a ring on the load. pin_in_ring, ring_in_jaw: of an eyebolt, a hoist ring or the hardware of an insert. eye_in_hole: the closed eye of a part in line at an attachment or a point of a beam. link_over_hook: a link or shackle over the hook of the crane. link_in_bow: a link, a shackle or a hook's eye in the bow or the jaw of a shackle. part_in_link: a shackle or another link in a link. body_in_socket: what a socket goes over."`
	Inner string `json:"inner" doc:"The part that goes over or into the other, as in S1's upper eye."`
	Outer string `json:"outer" doc:"The part that it goes over or into."`

	BothClosed           bool     `json:"both_closed" doc:"Whether one of the two is the closed eye of a part in line and the other a closed eye, ring or loop too, or the hole of a plate: neither goes into the other."`
	Thimble              bool     `json:"thimble" doc:"Whether an eye has a thimble, which keeps its shape; false for what is no eye."`
	RopeDiameterM        *float64 `json:"rope_diameter_m,omitempty" doc:"Diameter of the sling's rope. Concerns eyes over something."`
	EyeLengthM           *float64 `json:"eye_length_m,omitempty" doc:"Inside length of the eye, bearing point to crotch. Concerns eyes over something."`
	EyeWidthM            *float64 `json:"eye_width_m,omitempty" doc:"Inside width of the eye, as given. Asked for of a thimbled eye over something, which keeps it; does not concern any other of which it is not given."`
	EyeWidthGiven        bool     `json:"eye_width_given" doc:"Whether the plan gives the inside width of the eye."`
	ThimbleSizeGiven     bool     `json:"thimble_size_given" doc:"Whether the plan gives the rope that the thimble of an eye over something is made for."`
	ThimbleOverRopeRatio *float64 `json:"thimble_over_rope_ratio,omitempty" doc:"Rope diameter that the thimble is made for over the sling's own. Does not concern an eye without that."`
	BodyWidthM           *float64 `json:"body_width_m,omitempty" doc:"Width of what the eye goes over. Concerns eyes over something."`
	WidthOverLengthRatio *float64 `json:"width_over_length_ratio,omitempty" doc:"Width of the body over the eye's inside length. Concerns eyes over something."`
	EyeIncludedAngleDeg  *float64 `json:"eye_included_angle_deg,omitempty" doc:"Angle between the two sides of the eye as it is spread. Concerns eyes over something."`
	BendD                *float64 `json:"bend_d,omitempty" doc:"Width of the body over the diameter of the rope. Concerns eyes over something."`

	RoomM       *float64 `json:"room_m,omitempty" doc:"Width of the opening: of a hole, a jaw, a link, a bow, a socket. Concerns all but eyes over something."`
	NeedsM      *float64 `json:"needs_m,omitempty" doc:"Width of what goes into it. Concerns all but eyes over something."`
	FilledRatio *float64 `json:"filled_ratio,omitempty" doc:"Width of what goes in over that of the opening. Concerns all but eyes over something."`
	PinOverHole *float64 `json:"pin_over_hole_ratio,omitempty" doc:"Diameter of a shackle's pin, which its ears are wider than, over the width of the hole that its bow is to lie in. Concerns bow_in_hole."`
	Spaced      bool     `json:"spaced" doc:"Whether spacers keep it in the middle."`
}

// Gather is a place that two legs and more come together in.
type Gather struct {
	Record
	ID    string `json:"id" doc:"The link, shackle or hook."`
	Name  string `json:"name" doc:"The same in words, as in K5's bow."`
	What  string `json:"what" enum:"hook,link,bow,pin,shackle" doc:"What the legs bear on. shackle: an end of a shackle of which the plan does not say where its pin is."`
	Legs  int    `json:"legs" doc:"Number of legs that hang from it."`
	Links int    `json:"links" doc:"Number of intermediate links that bear on it for their legs."`

	Bearers          string   `json:"bearers" doc:"What lies there side by side, parked legs among them, in words, as in 2 intermediate links."`
	Pattern          *string  `json:"pattern,omitempty" enum:"bow,dee" doc:"Pattern of the shackle. Concerns shackles."`
	OnPin            *bool    `json:"on_pin,omitempty" doc:"Whether the legs bear on the pin of a shackle. Concerns shackles."`
	IncludedAngleDeg *float64 `json:"included_angle_deg,omitempty" doc:"The largest angle between two of the legs, or of the pulls of two links, as they hang."`
	RoomM            *float64 `json:"room_m,omitempty" doc:"Clear width that they lie in side by side."`
	NeedsM           *float64 `json:"needs_m,omitempty" doc:"Width that they take side by side: the rope of a soft eye, one and a half times the rope of a thimbled one, the bow of a shackle, twice the pin of a shackle for its ears, the section of a link, the eye of webbing, the handle of mesh."`
	FilledRatio      *float64 `json:"filled_ratio,omitempty" doc:"Width that they take over the clear width."`
}

// HookUse is a hook with what hangs in it, or what it hangs in.
type HookUse struct {
	Record
	ID      string `json:"id" doc:"The hook's name: that of a crane's support, or the item's id."`
	Name    string `json:"name" doc:"The same in words, as in the crane hook."`
	Of      string `json:"of" enum:"crane,sling" doc:"Whose hook it is."`
	MadeFor string `json:"made_for" enum:"lifting,sorting,grab,foundry,j" doc:"What it is made for."`

	Latch             *string  `json:"latch,omitempty" enum:"works,faulty,none" doc:"Whether its latch closes."`
	Points            *string  `json:"points,omitempty" enum:"outward,inward" doc:"Which way the tip of a sling's hook points. Concerns hooks of slings."`
	LegsDirect        int      `json:"legs_direct" doc:"Number of legs whose eyes hang in it, with no link between; zero for a sling's hook."`
	OffAxisDeg        *float64 `json:"off_axis_deg,omitempty" doc:"The largest angle between a leg and the hook's axis, which is vertical. Concerns hooks that legs hang in directly."`
	Passes            string   `json:"passes" doc:"What has to pass through the throat into the bowl, the thickest of several, as in ML1."`
	ThroatM           *float64 `json:"throat_m,omitempty" doc:"Opening between tip and shank."`
	WidestM           *float64 `json:"widest_m,omitempty" doc:"Thickness of the thickest thing that has to pass through the throat into the bowl."`
	ThroatFilledRatio *float64 `json:"throat_filled_ratio,omitempty" doc:"That thickness over the throat."`
}

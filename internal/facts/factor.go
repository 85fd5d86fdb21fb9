package facts

// Factor is one thing that makes what a part may carry differ from what is marked
// on it.
type Factor struct {
	Record
	Part          string   `json:"part" doc:"The part that it is of, in one use: its key in parts."`
	ID            string   `json:"id" doc:"That part's number in the plan."`
	Where         string   `json:"where" doc:"The leg, legs or support that the part works in."`
	What          string   `json:"what" enum:"choke_angle,bend,bend_at_end,edge,parts,shackle_pull,eyebolt_angle,tag_angle,temperature" doc:"What it comes from: the angle of a choke, the bend round a body or over a sheave, that of a grommet where it bears, an edge or a round body too thin for chain or fabric, the number of parts that carry side by side, a pull toward an end of a shackle's pin, the angle of a pull on an eyebolt, a leg flatter than the angle on the tag of its bridle, heat."`
	Ratio         float64  `json:"ratio" doc:"What it leaves of the rated load, 1 being all of it. All those of a part multiplied are its rated load as used over that marked. Over 1 only where more parts carry than the mark counts."`
	AngleDeg      *float64 `json:"angle_deg,omitempty" doc:"The angle that it follows from: between standing part and loop of a choke; of the pull from straight to a shackle's pin; of the pull from the axis of an eyebolt; of the flattest leg from horizontal. Concerns those that come from an angle."`
	BodyOverRatio *float64 `json:"body_over_size_ratio,omitempty" doc:"Diameter of the bend, or twice the radius of the edge, over the diameter of the rope, the size of the chain or the thickness of the sling. Concerns bend and edge."`
	Parts         *int     `json:"parts,omitempty" doc:"How many parts carry: two runs of a basket, of which the tag rates both together; four of a grommet laid double, of which it rates two. Concerns parts."`
	TemperatureC  *float64 `json:"temperature_c,omitempty" doc:"How hot it gets. Concerns temperature."`
	Source        string   `json:"source" doc:"Where the figure is from, in words."`
	Basis         string   `json:"basis" enum:"read,memory,practice,derived" doc:"How far to rely on it: the text was seen, quoted from memory, common practice with no source to name, or worked out by statics."`
}

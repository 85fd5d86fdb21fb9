package facts

// Beam is a spreader beam, a lifting beam, a lifting device or a rocker plate as it
// hangs.
type Beam struct {
	Record
	ID                 string   `json:"id" doc:"Its number in the plan."`
	Kind               string   `json:"kind" enum:"spreader_beam,lifting_beam,lifting_device,rocker_plate" doc:"What it is."`
	OnFile             bool     `json:"on_file" doc:"Whether the plan takes it from a gear register, where its proof tests stand."`
	TiltDeg            *float64 `json:"tilt_deg,omitempty" doc:"Its angle from level as it hangs; the largest in any phase and within the tolerances."`
	CompressionN       *float64 `json:"compression_n,omitempty" doc:"The largest force that squeezes it along its length, by statics; within the tolerances too."`
	BendingNm          *float64 `json:"bending_nm,omitempty" doc:"The largest bending moment in it, by statics of forces at its points and its mass at its center of gravity; within the tolerances too."`
	Phase              *string  `json:"phase,omitempty" doc:"The phase in which it is bent or squeezed the most. Concerns a lift in phases."`
	CompressionRated   bool     `json:"compression_rated" doc:"Whether the plan says what force along it it is rated for."`
	CompressionRatio   *float64 `json:"compression_over_rated_ratio,omitempty" doc:"That force over what it is rated for. Concerns a beam that is rated so."`
	BendingRated       bool     `json:"bending_rated" doc:"Whether the plan says what bending moment it is rated for."`
	BendingRatio       *float64 `json:"bending_over_rated_ratio,omitempty" doc:"Its bending moment over what it is rated for. Concerns a beam that is rated so."`
	CategoryGiven      bool     `json:"category_given" doc:"Whether the plan gives the category of its design, as marked."`
	ProofTestGiven     bool     `json:"proof_test_given" doc:"Whether the plan tells of a proof test."`
	ProofTestDated     bool     `json:"proof_test_dated" doc:"Whether it gives the day of that."`
	ProofTestDate      *string  `json:"proof_test_date,omitempty" doc:"That day, year-month-day. Concerns one with the day of a proof test."`
	ProofTestAfter     *bool    `json:"proof_test_after_lift,omitempty" doc:"Whether that day comes after the day the plan is judged for. Concerns one with the day of a proof test."`
	ProofTestRatio     *float64 `json:"proof_test_ratio,omitempty" doc:"Load of the proof test over its rated load. Concerns one with a proof test."`
	SpanM              *float64 `json:"span_m,omitempty" doc:"Distance, seen from above, of its two points that lie the furthest apart."`
	SpanGiven          bool     `json:"span_rated_for_given" doc:"Whether the plan says for which span its rated load holds."`
	SpanRatio          *float64 `json:"span_over_rated_ratio,omitempty" doc:"Its span over that for which its rated load holds. Concerns one that says so."`
	TopLegs            int      `json:"top_legs" doc:"Number of legs that hold it."`
	TopAngleDeg        *float64 `json:"top_angle_from_horizontal_deg,omitempty" doc:"Angle of the flattest leg that holds it."`
	LeastTopAngleGiven bool     `json:"least_top_angle_given" doc:"Whether the plan says how flat those legs may be."`
	LeastTopAngleDeg   *float64 `json:"least_top_angle_from_horizontal_deg,omitempty" doc:"How flat they may be for its rating to hold. Concerns a beam that says so."`
	TopAngleTooFlatDeg *float64 `json:"top_angle_too_flat_deg,omitempty" doc:"By how much the flattest of them is flatter than that; zero where it is not. Concerns a beam that says so."`
}

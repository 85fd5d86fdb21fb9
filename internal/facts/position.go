package facts

// Position is one leg in one phase of the lift.
type Position struct {
	Record
	Phase                  string   `json:"phase" doc:"The phase, with the pitch of a step."`
	PitchDeg               float64  `json:"pitch_from_horizontal_deg" doc:"Pitch of the load that is meant."`
	Leg                    string   `json:"leg" doc:"The leg."`
	Released               bool     `json:"released" doc:"Whether its hook is released."`
	TensionN               *float64 `json:"tension_n,omitempty" doc:"Force in it. Concerns a leg that is not released."`
	AngleFromHorizontalDeg *float64 `json:"angle_from_horizontal_deg,omitempty" doc:"Its angle. Concerns a leg that is not released."`
}

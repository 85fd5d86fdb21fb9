package facts

// Bearing is an end of a sling of webbing or of a round sling on the hook or fitting
// that it bears on.
type Bearing struct {
	Record
	ID            string   `json:"id" doc:"The sling's number in the plan."`
	SlingKind     string   `json:"sling_kind" enum:"web_sling,round_sling" doc:"What it is."`
	End           string   `json:"end" enum:"upper,lower" doc:"Which of its ends."`
	On            string   `json:"on" doc:"What that bears on, as in K1's bow."`
	BodyWidthM    *float64 `json:"body_width_m,omitempty" doc:"Thickness of that."`
	ContactM      *float64 `json:"contact_width_m,omitempty" doc:"Width that it lies in there: its own, and no more than the clear width of a bow, a jaw or an eye."`
	LoadN         *float64 `json:"load_n,omitempty" doc:"Force that it bears there with, as its leg is judged by."`
	PressurePa    *float64 `json:"pressure_pa,omitempty" doc:"That force over thickness times width."`
	ThicknessM    *float64 `json:"thickness_m,omitempty" doc:"Thickness of the sling under load."`
	EyeMatters    bool     `json:"eye_matters" doc:"Whether it is an eye of webbing of which the length is given, or which bears on something so thick that not every eye is long enough."`
	EyeLengthM    *float64 `json:"eye_length_m,omitempty" doc:"Inside length of the eye. Concerns eyes that matter."`
	EyeWidthTimes *float64 `json:"eye_length_over_body_times,omitempty" doc:"That length over the thickness of what it bears on. Concerns eyes that matter."`
}

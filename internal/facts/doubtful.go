package facts

// Doubtful is a record of an inspection, a look, a test or a repair of gear on file
// that leaves open what it comes to; one without a doubt stands for an item that has
// none of those.
type Doubtful struct {
	Record
	ID    string `json:"id" doc:"The item's id in the plan."`
	Uses  int    `json:"uses" doc:"Number of places in the lift where the item is used."`
	Date  string `json:"date" doc:"Its day, year-month-day; empty without a doubt."`
	Named string `json:"named" doc:"What it is called, as in periodic inspection; empty without a doubt."`
	Doubt string `json:"doubt" enum:"none,unfit_after_the_day,after_the_day,due_before_it,inspection_without_outcome,look_without_outcome" doc:"What is the matter; none: nothing is, with any record of the item. Otherwise: it is dated after the day that is judged for, and says that the item is unfit or damaged, or does not say that it is fit; it is dated after that day; it sets a due day before its own; it does not say what an inspection, a test or a repair came to, or a look before use or a frequent one, and none that answers it has come after."`
	Says  string `json:"says" doc:"What it says that the doubt is about, in words: the outcome, or the due day."`
}

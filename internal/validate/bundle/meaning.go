package bundle

import (
	"fmt"
	"strings"
)

// addMeanings sets beside an enum what each of its values means, which editors
// show while one chooses. Descriptions hold it as sentences: "weighed: on a
// scale. documented: from a nameplate."
func addMeanings(out object) {
	values, ok := out["enum"].([]any)
	description, _ := out["description"].(string)
	if !ok {
		return
	}
	meanings := make([]any, len(values))
	for i, v := range values {
		meanings[i] = meaning(description, fmt.Sprint(v))
	}
	out["enumDescriptions"] = meanings
}

// meaning is the sentence of a description that begins with a value and a
// colon, without them; empty if there is none.
func meaning(description, value string) string {
	_, after, ok := strings.Cut(" "+description, " "+value+": ")
	if !ok {
		return ""
	}
	sentence, _, more := strings.Cut(after, ". ")
	if more {
		sentence += "."
	}
	return sentence
}

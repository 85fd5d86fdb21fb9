package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"liftlint/schema"
)

// published names the schemas that people and editors use.
func published() map[string]string {
	return map[string]string{
		"plan":   "plan.bundled.schema.json",
		"facts":  "facts.schema.json",
		"report": "report.schema.json",
	}
}

func newSchema(e Environment) *cobra.Command {
	return &cobra.Command{
		Use:       "schema plan|facts|report",
		Short:     "Print the JSON Schema of plans, of facts or of the JSON report",
		Example:   "  liftlint schema plan > plan.schema.json",
		Args:      cobra.MatchAll(cobra.ExactArgs(1), cobra.OnlyValidArgs),
		ValidArgs: []string{"plan", "facts", "report"},
		RunE: func(_ *cobra.Command, args []string) error {
			text, err := schema.Files.ReadFile(published()[args[0]])
			if err != nil {
				return exit{Unchecked, err}
			}
			_, err = fmt.Fprintf(e.Stdout, "%s", text)
			return err
		},
	}
}

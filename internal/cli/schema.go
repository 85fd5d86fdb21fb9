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
		"rules":  "rules.schema.json",
		"page":   "page.schema.json",
		"config": "config.schema.json",
		"gear":   "gear.schema.json",

		"register": "register.bundled.schema.json",
		"columns":  "register/columns.schema.json",

		"baseline": "baseline.schema.json",
		"compare":  "compare.schema.json",
	}
}

func newSchema(e Environment) *cobra.Command {
	return &cobra.Command{
		Use:       "schema plan|register|columns|config|facts|report|rules|page|gear|baseline|compare",
		Short:     "Print the JSON Schema of plans, registers and configurations, or of what a command prints",
		Example:   "  liftlint schema plan > plan.schema.json",
		Args:      cobra.MatchAll(cobra.ExactArgs(1), cobra.OnlyValidArgs),
		ValidArgs: []string{"plan", "register", "columns", "config", "facts", "report", "rules", "page", "gear", "baseline", "compare"},
		Long: `Schema prints the JSON Schema of plans, of gear registers (*.gear.yaml) and of the
files that say what the columns of a table are (*.columns.yaml), of liftlint.yaml and
of baselines, or of what a command prints with --format json: facts, report (of check), rules, page (of explain), gear (of gear show), compare.`,
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

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

		"baseline": "baseline.schema.json",
		"compare":  "compare.schema.json",
	}
}

func newSchema(e Environment) *cobra.Command {
	return &cobra.Command{
		Use:       "schema plan|config|facts|report|rules|page|gear|baseline|compare",
		Short:     "Print the JSON Schema of plans, of configurations, or of what a command prints",
		Example:   "  liftlint schema plan > plan.schema.json",
		Args:      cobra.MatchAll(cobra.ExactArgs(1), cobra.OnlyValidArgs),
		ValidArgs: []string{"plan", "config", "facts", "report", "rules", "page", "gear", "baseline", "compare"},
		Long: `Schema prints the JSON Schema of plans, of liftlint.yaml and of baselines, or of what
a command prints with --format json: facts, report (of check), rules, page (of explain), gear (of gear show), compare.`,
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

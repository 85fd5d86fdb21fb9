package cli

import (
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"liftlint/internal/config"
	"liftlint/internal/lint"
	"liftlint/internal/nearest"
	"liftlint/internal/policy"
)

// judging are the options of every command that computes or judges.
type judging struct {
	// snapshot is what the plans are read from; nil is the file system as it is.
	snapshot *snapshot

	profile string
	stage   string
	on      string
	rules   []string
	config  string
	// registers are files of gear besides those of the configuration.
	registers []string
	baseline  string // what is known of the plans, instead of what the configuration names
}

func (j *judging) flags(c *cobra.Command) {
	f := c.Flags()
	f.StringVar(&j.profile, "profile", "", "whose practice to judge by, such as us or eu; overrules the plan's own")
	f.StringVar(&j.stage, "stage", policy.Review, "how far the plan has come: draft, review or prelift")
	f.StringVar(&j.on, "on", "", "the day to judge for, such as 2026-12-04; overrules the plan's own")
	f.StringVar(&j.config, "config", "", "the configuration to judge by, instead of every liftlint.yaml from the plan's folder up to the root")
	j.registerFlag(c)
	f.StringArrayVar(&j.rules, "rules", nil, "a folder of rules besides those built in; may be repeated")
}

func (j *judging) registerFlag(c *cobra.Command) {
	c.Flags().StringArrayVar(&j.registers, "register", nil, "a gear register that plans take gear from, besides those of the configuration: *.gear.yaml, or *.columns.yaml with its table; may be repeated")
}

// gearFlags are the options of commands that judge gear by itself.
func (j *judging) gearFlags(c *cobra.Command) {
	f := c.Flags()
	j.stage = policy.Review
	f.StringVar(&j.profile, "profile", "", "whose practice to judge by, such as us or eu")
	f.StringVar(&j.on, "on", "", "the day to judge for, such as 2026-12-04")
	f.StringVar(&j.config, "config", "", "the configuration to judge by, instead of every liftlint.yaml from this folder up to the root")
}

// options turns the flags into what the pipeline takes.
func (j *judging) options() (lint.Options, error) {
	o := lint.Options{Profile: j.profile, Stage: j.stage}
	if j.on != "" {
		day, err := time.Parse(time.DateOnly, j.on)
		if err != nil {
			return o, wrongUsage(fmt.Errorf("--on %s is no day: write year, month and day, such as 2026-12-04", j.on))
		}
		o.On = &day
	}
	for _, dir := range j.rules {
		info, err := os.Stat(dir)
		if err != nil {
			return o, wrongUsage(fmt.Errorf("--rules: %w", err))
		}
		if !info.IsDir() {
			return o, wrongUsage(fmt.Errorf("--rules: %s is no folder", dir))
		}
		found, err := fs.Glob(os.DirFS(dir), "*/*/rule.rego")
		if err != nil || len(found) == 0 {
			return o, wrongUsage(fmt.Errorf("--rules: %s holds no rule: rules stand in TOPIC/RULE/rule.rego", dir))
		}
		o.Rules = append(o.Rules, policy.Source{Root: dir, Files: os.DirFS(dir)})
	}
	return o, nil
}

// configFor is the configuration that holds for plans in a folder.
func (j *judging) configFor(folder string) (config.Config, error) {
	if j.config != "" {
		return config.Read(j.config)
	}
	if j.snapshot != nil {
		return j.snapshot.configFor(folder)
	}
	return config.For(folder)
}

// linter judges the plans of one folder.
func (j *judging) linter(folder string, remedies bool) (*lint.Linter, error) {
	l, err := newLinters(j, remedies).forFolder(folder)
	return l, asUsage(err)
}

// profilesOf lists the profile asked for, or all.
func profilesOf(j *judging) ([]string, error) {
	if j.profile != "" {
		return []string{j.profile}, nil
	}
	return lint.ProfileNames()
}

// choice is a flag that takes one of several words.
type choice struct {
	value   string
	allowed []string
}

func oneOf(allowed ...string) *choice { return &choice{allowed[0], allowed} }

// String is the word chosen.
func (c *choice) String() string { return c.value }

// Type is what help calls the value.
func (c *choice) Type() string { return "word" }

// Set takes a word, or says which there are.
func (c *choice) Set(word string) error {
	if !slices.Contains(c.allowed, word) {
		if near, ok := nearest.Name(word, c.allowed); ok {
			return fmt.Errorf("did you mean %s?", near)
		}
		return fmt.Errorf("write %s", strings.Join(c.allowed, " or "))
	}
	c.value = word
	return nil
}

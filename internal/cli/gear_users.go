package cli

import (
	"cmp"
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"liftlint/internal/lint"
	"liftlint/internal/register"
)

// gearUsers are plans and the items on file that they use.
type gearUsers struct {
	env     Environment
	judging *judging
	linters *linters
	plans   []*lint.Result
	wrong   []string // plans that could not be read
}

// notOn are the numbers of items that the plans use and a register does not have.
func (u *gearUsers) notOn(r *register.Register) []string {
	var list []string
	for _, p := range u.plans {
		for _, use := range p.Uses() {
			if _, ok := r.Find(use.Number); !ok {
				list = append(list, use.Number)
			}
		}
	}
	return distinct(list)
}

// read reads plans; those that are not valid are named at the end.
func (u *gearUsers) read(args []string) error {
	if len(args) == 0 {
		return nil
	}
	inputs, err := (&check{env: u.env, stdinName: "stdin"}).inputs(args)
	if err != nil {
		return err
	}
	if len(inputs) == 0 {
		return exit{Nothing, errors.New("there is no plan to read")}
	}
	each := newLinters(u.judging, false)
	u.linters = each
	for _, in := range inputs {
		linter, err := each.forFolder(filepath.Dir(in.path))
		if err != nil {
			return asUsage(err)
		}
		text, err := in.read()
		if err != nil {
			return exit{Unchecked, err}
		}
		r, err := linter.Compute(in.path, text)
		var problems register.Problems
		switch {
		case errors.As(err, &problems):
			return registerFailed(u.env, problems)
		case err != nil:
			return exit{Unchecked, err}
		case r.State == lint.NotValid:
			u.wrong = append(u.wrong, in.path)
		default:
			u.plans = append(u.plans, r)
		}
	}
	return nil
}

// failed names plans that could not be read: what they use is not known.
func (u *gearUsers) failed() error {
	if len(u.wrong) == 0 {
		return nil
	}
	return exit{Findings, fmt.Errorf("what these plans use is not known, since they are not valid: %s", strings.Join(u.wrong, ", "))}
}

func (u *gearUsers) firstDay() string {
	first := ""
	for _, r := range u.plans {
		if d := r.Planned(); d != "" && (first == "" || d < first) {
			first = d
		}
	}
	return first
}

// of lists the lifts that use an item.
func (u *gearUsers) of(number string) []string {
	var list []string
	for _, r := range u.plans {
		for _, use := range r.Uses() {
			if use.Number == number {
				list = append(list, fmt.Sprintf("%s on %s, as %s", r.ID, cmp.Or(r.Planned(), "a day that is not given"), use.ID))
			}
		}
	}
	return list
}

// lastDays are the last days on which lifts use items, by their numbers; there is none
// where no day is known.
func (u *gearUsers) lastDays() map[string]time.Time {
	last := map[string]time.Time{}
	for _, r := range u.plans {
		day, err := time.Parse(time.DateOnly, r.Planned())
		if err != nil {
			continue // it has none, which withoutDay counts
		}
		for _, use := range r.Uses() {
			last[use.Number] = later(last[use.Number], day)
		}
	}
	return last
}

// withoutDay counts the plans that use gear on file and give no day.
func (u *gearUsers) withoutDay() int {
	n := 0
	for _, r := range u.plans {
		if r.Planned() == "" && len(r.Uses()) > 0 {
			n++
		}
	}
	return n
}

package lint

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"sync"

	"liftlint/internal/finding"
	"liftlint/internal/onfile"
	"liftlint/internal/register"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// Registers are the gear registers of a run. They are read once, and only when
// a plan takes gear from them. It is safe for concurrent use.
type Registers struct {
	paths []string
	load  func() (*register.Register, error)

	mu    sync.Mutex
	whole *register.Loaded             // once files were read, and are without fault
	texts map[string]*yamldoc.Document // of the files that findings led into; nil for one that is large
}

// NewRegisters names the files of registers, as register.Reader.Load takes them.
func NewRegisters(paths ...string) *Registers {
	r := &Registers{paths: paths, texts: map[string]*yamldoc.Document{}}
	r.load = sync.OnceValues(r.read)
	return r
}

// RegisterText is one register in YAML that is at hand as text, by the name given.
func RegisterText(name, text string) *Registers {
	r := &Registers{paths: []string{name}, texts: map[string]*yamldoc.Document{}}
	r.load = sync.OnceValues(func() (*register.Register, error) {
		rd, err := register.NewReader()
		if err != nil {
			return nil, err
		}
		return rd.ReadYAML(name, []byte(text))
	})
	if doc, _ := yamldoc.ReadWithin(yamldoc.RegisterLimits(), name, []byte(text)); doc != nil {
		r.texts[name] = doc
	}
	return r
}

// WithRegisters is the linter for plans that take gear from other registers; the
// rules are shared.
func (l *Linter) WithRegisters(r *Registers) *Linter {
	other := *l
	other.options.Registers = r
	return &other
}

// AtStage is the linter for plans that have come as far as a stage; the rules are
// shared. Empty leaves the stage as it is.
func (l *Linter) AtStage(stage string) *Linter {
	if stage == "" {
		return l
	}
	other := *l
	other.options.Stage = stage
	return &other
}

// Register is what the files hold together. The error is onfile.ErrNone where
// none is named, and holds register.Problems where one is wrong.
func (r *Registers) Register() (*register.Register, error) {
	if r == nil || len(r.paths) == 0 {
		return nil, onfile.ErrNone
	}
	return r.load()
}

func (r *Registers) read() (*register.Register, error) {
	rd, err := register.NewReader()
	if err != nil {
		return nil, err
	}
	loaded, err := rd.Load(r.paths...)
	if err != nil {
		return nil, fmt.Errorf("the gear register is not used, for its faults:\n%w", err)
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	r.whole = loaded
	return loaded.Register, nil
}

// Notes tell of cells of tables that were not read; none where nothing of the registers
// was asked for.
func (r *Registers) Notes() []register.Note {
	if r == nil {
		return nil
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.whole == nil {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(r.whole.Notes), func(n register.Note) bool { return !n.OfCells() })
}

// PassedBy is what lies in the folders of the registers and was not read; none where
// nothing of them was asked for.
func (r *Registers) PassedBy() register.PassedBy {
	if r == nil {
		return register.PassedBy{}
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.whole == nil {
		return register.PassedBy{}
	}
	return r.whole.PassedBy
}

// easilyRead is how large a register may be for its text to be read anew to find
// the line of a value; in larger ones findings name the line of the item.
const easilyRead = 512 << 10

// mostTexts is how many texts are kept at a time.
const mostTexts = 4

// locate gives a place in a register as reports have it: in a table the line that
// the row begins on.
func (r *Registers) locate(p register.Place) source.Location {
	where := source.Location{File: p.File, Pointer: p.Fragment(), Range: p.Range}
	if p.Row > 0 {
		at := source.Position{Line: max(p.Line, 1), Column: 1}
		where.Range = source.Range{From: at, To: at}
		return where
	}
	if doc := r.text(p.File); doc != nil {
		where.Range = lineOf(doc, p.Pointer)
	}
	return where
}

// lineOf is the range of a value; of a mapping or list its key or, in a list, the
// number or else the first line.
func lineOf(doc *yamldoc.Document, pointer string) source.Range {
	n, ok := doc.Find(pointer)
	place := doc.Nearest(pointer)
	switch {
	case !ok || n.Kind != yamldoc.Mapping && n.Kind != yamldoc.Sequence:
		return place.Value
	case n.Get("number") != nil:
		return n.Get("number").Place.Value
	case n.Get("date") != nil:
		return n.Get("date").Place.Value
	case !place.Key.IsZero():
		return place.Key
	}
	return place.Value
}

func (r *Registers) text(file string) *yamldoc.Document {
	r.mu.Lock()
	defer r.mu.Unlock()
	doc, known := r.texts[file]
	if known {
		return doc
	}
	if info, err := os.Stat(file); err == nil && info.Size() <= easilyRead {
		if src, err := os.ReadFile(file); err == nil {
			doc, _ = yamldoc.ReadWithin(yamldoc.RegisterLimits(), file, src)
		}
	}
	if len(r.texts) >= mostTexts {
		clear(r.texts)
	}
	r.texts[file] = doc
	return doc
}

// addUnlike tells where the plan says something else of gear than the register,
// whose word is taken.
func (r *Result) addUnlike() {
	for _, u := range r.onFile.Unlike {
		message := fmt.Sprintf("%s of %s is %s here and %s in the register, item %s, by which it is judged: correct one of them",
			strings.ReplaceAll(u.Field, "_", " "), u.Entry.ID, u.Here.Text, u.There, u.Entry.Item.Number)
		there := finding.Related{Caption: "what the register says", Place: r.registers.locate(u.Place())}
		r.addBuiltin("register/disagrees", message, "gear/"+u.Entry.ID, source.Location{File: r.File, Pointer: u.Here.Pointer, Range: u.Here.Place.Value}, []finding.Related{there})
	}
}

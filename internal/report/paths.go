package report

import (
	"net/url"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// Paths names files as reports for other programs do: from one folder on, such
// as that of the repository, whatever folder the command was started in.
type Paths struct {
	Root   string // absolute: reports name files from here
	Folder string // absolute: relative names of files start here
}

// Relative is the name of a file from the root on, with slashes. It is never
// absolute: of a file on another volume only its own name is left.
func (p Paths) Relative(file string) string {
	full := file
	if !filepath.IsAbs(full) {
		full = filepath.Join(p.Folder, file)
	}
	if rel, err := filepath.Rel(p.Root, full); p.Root != "" && err == nil {
		return filepath.ToSlash(rel)
	}
	if filepath.IsAbs(file) {
		file = filepath.Base(file)
	}
	return path.Clean(filepath.ToSlash(file))
}

// URI is the name of a file as a relative reference (RFC 3986).
func URI(file string) string { return (&url.URL{Path: file}).String() }

// RelativeTo is the run with every file named from the root of the paths. The
// run itself stays as it is.
func (r Run) RelativeTo(p Paths) Run {
	names := p.namesIn(r)
	r.Failures = slices.Clone(r.Failures)
	for i, f := range r.Failures {
		r.Failures[i] = names.Replace(f)
	}
	r.Lost, r.Gone, r.GoneConfigs = p.each(r.Lost), p.each(r.Gone), p.each(r.GoneConfigs)
	r.NotCompared = p.each(r.NotCompared)
	r.Results = slices.Clone(r.Results)
	for i, x := range r.Results {
		if x != nil {
			r.Results[i] = p.result(x, names)
		}
	}
	return r
}

func (p Paths) each(files []string) []string {
	files = slices.Clone(files)
	for i, f := range files {
		files[i] = p.Relative(f)
	}
	return files
}

func (p Paths) result(x *lint.Result, names *strings.Replacer) *lint.Result {
	named := *x
	named.File = p.Relative(x.File)
	named.Overrides = slices.Clone(x.Overrides)
	for i, o := range named.Overrides {
		named.Overrides[i].From = p.from(o)
	}
	named.Findings = slices.Clone(x.Findings)
	for i := range named.Findings {
		f := &named.Findings[i]
		f.Message, f.Key = names.Replace(f.Message), names.Replace(f.Key)
		f.Place.File = p.Relative(f.Place.File)
		f.Related = slices.Clone(f.Related)
		if f.Aside != nil {
			aside := *f.Aside
			aside.Place.File, aside.Reason = p.Relative(aside.Place.File), names.Replace(aside.Reason)
			f.Aside = &aside
		}
		for k := range f.Related {
			f.Related[k].Place.File = p.Relative(f.Related[k].Place.File)
		}
	}
	return &named
}

func (p Paths) from(o policy.Override) string {
	if o.From == "" {
		return ""
	}
	return p.Relative(o.From)
}

// namesIn replaces in a text the names of the run's files that are absolute or
// begin with dots: no other could be told from a word. What else lies below the
// root is cut at it.
func (p Paths) namesIn(r Run) *strings.Replacer {
	files := slices.Clone(r.Lost)
	for _, x := range r.Results {
		if x == nil {
			continue
		}
		files = append(files, x.File)
		for _, o := range x.Overrides {
			files = append(files, o.From)
		}
		for _, f := range x.Findings {
			files = append(files, placesOf(f)...)
		}
	}
	slices.Sort(files)
	files = slices.Compact(files)
	slices.Reverse(files) // of two names where one begins the other, the longer first
	var pairs []string
	for _, f := range files {
		if filepath.IsAbs(f) || strings.HasPrefix(f, ".") && strings.ContainsAny(f, `/\`) {
			pairs = append(pairs, f, p.Relative(f))
		}
	}
	if root := strings.TrimSuffix(p.Root, string(filepath.Separator)); root != "" {
		pairs = append(pairs, root+string(filepath.Separator), "")
	}
	return strings.NewReplacer(pairs...)
}

func placesOf(f finding.Finding) []string {
	files := []string{f.Place.File}
	for _, x := range f.Related {
		files = append(files, x.Place.File)
	}
	if f.Aside != nil {
		files = append(files, f.Aside.Place.File)
	}
	return files
}

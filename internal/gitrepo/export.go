package gitrepo

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
)

// Export writes the files of a tree below a folder, byte for byte as the
// repository holds them: no filters run. Those that keep refuses, by path and size
// in bytes, are left out.
//
// A link stays one. If it leads out of the tree, it leads to the same place as it
// would from the working tree; one that is absolute and leads into the working tree
// leads into the folder.
func (r *Repo) Export(ctx context.Context, t Tree, folder string, keep func(path string, size int64) bool) error {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return err
	}
	defer root.Close()
	byRepo := map[*Repo][]string{}
	for _, p := range slices.Sorted(maps.Keys(t)) {
		byRepo[t[p].repo] = append(byRepo[t[p].repo], p)
	}
	for repo, paths := range byRepo {
		out := writer{from: r, root: root, folder: folder, keep: keep}
		if err := repo.contents(ctx, t, paths, out.write); err != nil {
			return err
		}
	}
	return nil
}

// contents hands out the content of each file in turn.
func (r *Repo) contents(ctx context.Context, t Tree, paths []string, use func(p string, e Entry, size int64, content io.Reader) error) (err error) {
	c := r.command(ctx, "cat-file", "--batch")
	var said strings.Builder
	c.Stderr = &said
	in, err := c.StdinPipe()
	if err != nil {
		return err
	}
	out, err := c.StdoutPipe()
	if err != nil {
		return err
	}
	if err := c.Start(); err != nil {
		return failure("cat-file", "", err)
	}
	defer func() {
		if err != nil {
			_ = c.Process.Kill() // it waits to be read
		}
		if ended := c.Wait(); err == nil && ended != nil {
			err = failure("cat-file", said.String(), ended)
		}
	}()
	go func() {
		for _, p := range paths {
			if _, err := io.WriteString(in, t[p].Object+"\n"); err != nil {
				break // the reader is told by the end of the output
			}
		}
		in.Close()
	}()
	from := bufio.NewReaderSize(out, 1<<16)
	for _, p := range paths {
		if err := one(from, p, t[p], use); err != nil {
			return err
		}
	}
	return nil
}

// one reads an answer: a line of name, kind and size, the content, a line's end.
func one(from *bufio.Reader, p string, e Entry, use func(string, Entry, int64, io.Reader) error) error {
	head, err := from.ReadString('\n')
	if err != nil {
		return fmt.Errorf("git cat-file: nothing is told of %s: %w", p, err)
	}
	var name, kind string
	var size int64
	if _, err := fmt.Sscanf(head, "%s %s %d\n", &name, &kind, &size); err != nil || kind != "blob" {
		return fmt.Errorf("git cat-file: the content of %s is not in this clone: %s", p, strings.TrimSpace(head))
	}
	content := io.LimitReader(from, size)
	if err := use(p, e, size, content); err != nil {
		return err
	}
	if _, err := io.Copy(io.Discard, content); err != nil {
		return err
	}
	_, err = from.Discard(1)
	return err
}

// writer writes files below a folder and never beside it.
type writer struct {
	from   *Repo
	root   *os.Root
	folder string
	keep   func(string, int64) bool
}

func (w writer) write(p string, e Entry, size int64, content io.Reader) (err error) {
	if !w.keep(p, size) {
		return nil
	}
	name := filepath.FromSlash(p)
	if err := w.root.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	if e.Mode == modeLink {
		target, err := io.ReadAll(content)
		if err != nil {
			return err
		}
		return w.root.Symlink(w.target(p, string(target)), name)
	}
	f, err := w.root.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	_, err = io.Copy(f, content)
	return errors.Join(err, f.Close())
}

// target is where a link leads once it stands below the folder.
func (w writer) target(p, target string) string {
	if path.IsAbs(target) {
		if rel, err := filepath.Rel(w.from.Top, target); err == nil && filepath.IsLocal(rel) {
			return filepath.Join(w.folder, rel)
		}
		return target
	}
	if filepath.IsLocal(filepath.FromSlash(path.Join(path.Dir(p), target))) {
		return target
	}
	return filepath.Join(w.from.Top, filepath.FromSlash(path.Join(path.Dir(p), target)))
}

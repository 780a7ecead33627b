package main

import (
	"io"
	"os"
	"path/filepath"
)

// writeFile writes a file as a whole or not at all: beside it first, then in its place. A file that
// was there keeps its permissions, and what a link points to is what is replaced.
func writeFile(path string, write func(io.Writer) error) error {
	if target, err := filepath.EvalSymlinks(path); err == nil {
		path = target
	}
	mode := os.FileMode(0o644)
	if info, err := os.Stat(path); err == nil {
		if info.IsDir() {
			return refusal{path + " can't be written: it is a folder.", "Name a file."}
		}
		mode = info.Mode().Perm()
	}
	if err := replace(path, mode, write); err != nil {
		return refusal{path + " can't be written: " + plainError(err) + ".", "Check the path, and that you may write there."}
	}
	return nil
}

func replace(path string, mode os.FileMode, write func(io.Writer) error) error {
	f, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*")
	if err != nil {
		return err
	}
	defer os.Remove(f.Name()) // after the renaming there is nothing left to remove
	err = write(f)
	for _, step := range []func() error{func() error { return f.Chmod(mode) }, f.Sync, f.Close} {
		if e := step(); err == nil {
			err = e
		}
	}
	if err != nil {
		return err
	}
	return os.Rename(f.Name(), path)
}

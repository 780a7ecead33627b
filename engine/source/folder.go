package source

import (
	"io/fs"
	"path"
	"sort"
	"strings"
	"sync"
)

// ReadFolder reads the .hcl files of one folder, in the order of their names, as one unit. The
// shown name of each file is show joined with its own name. A missing or empty folder is an error.
func ReadFolder(fsys fs.FS, dir, show string) ([]*File, Diagnostics) {
	entries, err := fs.ReadDir(fsys, dir)
	if err != nil {
		return nil, Diagnostics{Errorf(Range{}, "folder", "The folder %s can't be read.", show).
			Hinting("Check the path; a ruleset or vocabulary is a folder with .hcl files.")}
	}
	var files []*File
	var diags Diagnostics
	for _, e := range entries {
		if e.IsDir() || !strings.HasSuffix(e.Name(), ".hcl") || strings.HasPrefix(e.Name(), ".") {
			continue
		}
		name := path.Join(show, e.Name())
		if info, err := e.Info(); err == nil && info.Size() > 4*MaxFileSize { // never load what is refused anyway
			diags = append(diags, Errorf(Range{}, "too_large", "The file %s has %d bytes; more than %d are not read.", name, info.Size(), MaxFileSize).
				Hinting("Divide it into several files: all .hcl files of the folder are read as one."))
			continue
		}
		src, err := fs.ReadFile(fsys, path.Join(dir, e.Name()))
		if err != nil {
			diags = append(diags, Errorf(Range{}, "file", "The file %s can't be read.", name).Hinting("Check that it is a plain file that you may read."))
			continue
		}
		files = append(files, NewFile(name, src))
	}
	if len(files) == 0 && len(diags) == 0 {
		diags = append(diags, Errorf(Range{}, "folder", "The folder %s has no .hcl files.", show).
			Hinting("A ruleset or vocabulary is a folder with .hcl files; check the path."))
	}
	sort.Slice(files, func(i, j int) bool { return files[i].Name < files[j].Name })
	return files, diags
}

// ReadBlocks reads all files and gives their top-level blocks in order. Attributes outside of any
// block are errors.
func ReadBlocks(files []*File) ([]*Block, Diagnostics) {
	roots, found := make([]*Block, len(files)), make([]Diagnostics, len(files))
	var wait sync.WaitGroup
	for i, f := range files { // cutting texts into tokens is most of the work, and no file needs another
		wait.Go(func() { roots[i], found[i] = ReadHCL(f) })
	}
	wait.Wait()
	var blocks []*Block
	var diags Diagnostics
	for i, root := range roots {
		diags = append(diags, found[i]...)
		if root == nil {
			continue
		}
		for _, a := range root.Attrs {
			diags = append(diags, Errorf(a.NameWhere, "outside", "%s stands outside of any block.", a.Name).
				Hinting("Move it into the block that it belongs to."))
		}
		blocks = append(blocks, root.Blocks...)
	}
	return blocks, diags
}

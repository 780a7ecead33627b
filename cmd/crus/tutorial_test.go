package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The tutorial and the README show what the program really prints. Their files are written and their
// commands run in order; comments that a reader does not see say what is done with the block below them:
//
//	<!-- write F -->, <!-- append F -->   the block is the file F, or goes to its end
//	<!-- replace F -->                    the block takes the place of the one in F with the same first line
//	<!-- show A..B -->                    of what is printed, from the line that begins with A up to that with B
//
// A block of HCL without a comment is left as it is.
func TestTutorial(t *testing.T) { retold(t, "../../docs/tutorial.md", t.TempDir()) }

func TestReadme(t *testing.T) { retold(t, "../../README.md", "../..") }

// retold holds a document against what the program does in a folder.
func retold(t *testing.T, path, dir string) {
	t.Helper()
	before, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := filepath.Abs(path)
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(dir)
	after := retell(t, strings.Split(string(before), "\n"))
	switch {
	case strings.Join(after, "\n") == string(before):
	case *update:
		if err := os.WriteFile(doc, []byte(strings.Join(after, "\n")), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		for _, l := range diffLines(string(before), strings.Join(after, "\n")) {
			if l.sign != ' ' {
				t.Errorf("%c %s", l.sign, l.text)
			}
		}
		t.Errorf("%s shows something else than the program does; -update writes what it prints", filepath.Base(path))
	}
}

// retell gives a document with what its commands print now.
func retell(t *testing.T, lines []string) (out []string) {
	var order, of string
	for i := 0; i < len(lines); i++ {
		line := lines[i]
		out = append(out, line)
		if said, ok := strings.CutPrefix(line, "<!-- "); ok {
			order, of, _ = strings.Cut(strings.TrimSuffix(said, " -->"), " ")
			continue
		}
		if line != "```hcl" && line != "```console" {
			continue
		}
		end := i + 1 + slices.Index(lines[i+1:], "```")
		block := lines[i+1 : end]
		switch {
		case line == "```hcl" && order == "":
		case line == "```hcl":
			lay(t, order, of, block)
		default:
			block = repeat(t, block, of)
		}
		out = append(out, block...)
		i, order, of = end-1, "", ""
	}
	return out
}

// lay puts a block into a file.
func lay(t *testing.T, order, file string, block []string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	src, _ := os.ReadFile(file)
	old := strings.Split(strings.TrimSuffix(string(src), "\n"), "\n")
	switch order {
	case "write":
		old = block
	case "append":
		old = append(append(old, ""), block...)
	case "replace":
		at := slices.Index(old, block[0])
		if at < 0 {
			t.Fatalf("%s has no block %s", file, block[0])
		}
		old = slices.Replace(old, at, at+1+slices.Index(old[at:], "}"), block...)
	default:
		t.Fatalf("nothing says where this goes: %s", block[0])
	}
	if err := os.WriteFile(file, []byte(strings.Join(old, "\n")+"\n"), 0o644); err != nil {
		t.Fatal(err)
	}
}

// repeat runs the commands of a block again.
func repeat(t *testing.T, block []string, show string) (out []string) {
	t.Helper()
	for _, line := range block {
		command, ok := strings.CutPrefix(line, "$ crus ")
		if !ok {
			continue
		}
		var printed strings.Builder
		if run(strings.Fields(command), strings.NewReader(""), &printed, &printed) == failed {
			t.Fatalf("%s\n%s", line, printed.String())
		}
		out = append(out, line)
		if printed.Len() == 0 {
			continue
		}
		text := strings.Split(strings.TrimRight(printed.String(), "\n"), "\n")
		for i := range text {
			text[i] = strings.TrimRight(text[i], " ")
		}
		out = append(out, cut(t, text, show)...)
	}
	return out
}

// cut leaves out what stands before and after the part to show.
func cut(t *testing.T, text []string, show string) []string {
	t.Helper()
	if show == "" {
		return text
	}
	from, to, _ := strings.Cut(show, "..")
	begins := func(with string) int {
		at := slices.IndexFunc(text, func(s string) bool { return strings.HasPrefix(s, with) })
		if at < 0 {
			t.Fatalf("no line begins with %s", with)
		}
		return at
	}
	part := text[begins(from):begins(to)]
	for part[len(part)-1] == "" {
		part = part[:len(part)-1]
	}
	return append(append([]string{"…"}, part...), "…")
}

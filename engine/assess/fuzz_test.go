package assess

import (
	"bytes"
	"strings"
	"testing"

	"crus/engine/source"
	"crus/engine/vocab"
)

// holds checks what must be true of any text: no panic, either an assessment or an error, every
// place inside the text, and an assessment that is written reads back to the same.
func holds(t *testing.T, v *vocab.Vocabulary, name string, text []byte) {
	f := source.NewFile(name, text)
	list, diags := Read(f, v)
	if len(list) == 0 && !diags.HasErrors() {
		t.Fatal("neither an assessment nor an error")
	}
	for _, d := range diags {
		if d.Message == "" || d.Hint == "" {
			t.Errorf("%q has no way out", d.Message)
		}
		if w := d.Where; w.Known() && (w.Start < 0 || w.Start > w.End || w.End > len(text)) {
			t.Errorf("%q is at %d-%d of %d bytes", d.Message, w.Start, w.End, len(text))
		}
	}
	diags.Text()
	for _, a := range list {
		if len(a.DeviceFor) == 0 || a.ID == "" {
			t.Errorf("an assessment without id or device: %+v", a)
		}
		written, err := a.JSON()
		if err != nil {
			t.Fatal(err)
		}
		b, diags := ReadJSON(source.NewFile("written.json", written), v)
		if b == nil {
			t.Fatalf("%s\n%s", written, diags.Text())
		}
		if again, err := b.JSON(); err != nil || !bytes.Equal(again, written) {
			t.Fatalf("%s\n%s", written, again)
		}
	}
}

// seeds are the texts of the other tests in one format.
func seeds(f *testing.F, ending string, more ...string) {
	for name, text := range broken() {
		if strings.HasSuffix(name, ending) && len(text) < 10_000 {
			f.Add([]byte(text))
		}
	}
	for _, text := range more {
		f.Add([]byte(text))
	}
}

func FuzzJSON(f *testing.F) {
	seeds(f, ".json", fullJSON, left(`"device": "\u00e9\\\"\n"`))
	v := vocabulary(f)
	f.Fuzz(func(t *testing.T, text []byte) { holds(t, v, "a.json", text) })
}

func FuzzHCL(f *testing.F) {
	seeds(f, ".hcl", fullHCL)
	v := vocabulary(f)
	f.Fuzz(func(t *testing.T, text []byte) { holds(t, v, "a.hcl", text) })
}

func FuzzCSV(f *testing.F) {
	seeds(f, ".csv", fullCSV, strings.ReplaceAll(fullCSV, ",", ";"), strings.ReplaceAll(fullCSV, ",", "\t"))
	v := vocabulary(f)
	f.Fuzz(func(t *testing.T, text []byte) { holds(t, v, "a.csv", text) })
}

func FuzzLines(f *testing.F) {
	seeds(f, ".jsonl", compact(fullJSON)+"\n"+compact(minimal()))
	v := vocabulary(f)
	f.Fuzz(func(t *testing.T, text []byte) {
		holds(t, v, "a.jsonl", text)
		var fromStream []*Assessment
		var said source.Diagnostics
		for a, diags := range Lines(bytes.NewReader(text), "a.jsonl", v) {
			if a != nil {
				fromStream = append(fromStream, a)
			}
			said = append(said, diags...)
		}
		list, diags := Read(source.NewFile("a.jsonl", text), v)
		if len(list) != len(fromStream) || diags.Text() != said.Text() {
			t.Errorf("the stream says\n%s\nand the file\n%s", said.Text(), diags.Text())
		}
	})
}

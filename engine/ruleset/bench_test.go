package ruleset

import (
	"fmt"
	"io/fs"
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// large makes a ruleset of n rules over the lower-limb vocabulary, with a fifth as many findings and
// a tenth as many quantities and cautions, in conditions of the usual length.
func large(t testing.TB, n int) fs.FS {
	t.Helper()
	var facts, rules strings.Builder
	for i := range n / 5 {
		fmt.Fprintf(&facts, `
finding "f%[1]d" {
  holds   = "limb.ankle_dorsiflexion_knee_extended <= deg(%[2]d) && limb.plantarflexor_power >= muscle_power('3')"
  because = "Dorsiflexion of ${limb.ankle_dorsiflexion_knee_extended} with the knee straight."
}
`, i, i%20)
	}
	for i := range n / 10 {
		fmt.Fprintf(&facts, `
quantity "q%[1]d" {
  unit  = "mm"
  value = "limb.shoe_heel_height - limb.shoe_forefoot_height + mm(%[1]d)"
}

caution "c%[1]d" {
  level = "precaution"
  when  = "finding.f%[1]d && person.age > years(%[2]d)"
  says  = "Something that a clinician would be told of ${person.age}."
  basis = "common_practice"
}
`, i, i%90)
	}
	for i := range n {
		fmt.Fprintf(&rules, `
rule "r%[1]d" {
  when     = <<-EOT
    finding.f%[2]d && !finding.f%[3]d
      && (limb.hindfoot_alignment in ['varus', 'valgus'] || limb.knee_extension < deg(%[4]d))
      && quantity.q%[5]d > mm(%[4]d)
  EOT
  unless   = "recorded(person.walking_speed) && person.walking_speed > m_per_s(1.%[4]d)"
  because  = "Heel height gives ${quantity.q%[5]d}; the hindfoot is in ${limb.hindfoot_alignment}."
  strength = "conditional"
  basis    = "common_practice"
  advise "shell_trimline" { at_least = "through_malleoli" }
  advise "heel_raise" { aim = "quantity.q%[5]d / 2" }
}
`, i, i%(n/5), (i+1)%(n/5), i%10, i%(n/10))
	}
	header := `ruleset "large" {
  title      = "A large ruleset"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "lower_limb@1"
}
`
	files := fstest.MapFS{
		"large/header.hcl": {Data: []byte(header)},
		"large/facts.hcl":  {Data: []byte(facts.String())},
		"large/rules.hcl":  {Data: []byte(rules.String())},
	}
	vocabulary := os.DirFS("../../rulesets")
	names, err := fs.Glob(vocabulary, "lower_limb/*.hcl")
	if err != nil || len(names) == 0 {
		t.Fatalf("vocabulary %v, error %v", names, err)
	}
	for _, name := range names {
		src, err := fs.ReadFile(vocabulary, name)
		if err != nil {
			t.Fatal(err)
		}
		files[name] = &fstest.MapFile{Data: src}
	}
	return files
}

func TestLargeRuleset(t *testing.T) {
	rs, diags := Library{Embedded: large(t, 500)}.Ruleset("large")
	if rs == nil {
		t.Fatal(diags.Text())
	}
	if len(rs.Rules) != 500 || len(rs.Facts) != 150 || len(rs.Cautions) != 50 {
		t.Errorf("%d rules, %d facts, %d cautions", len(rs.Rules), len(rs.Facts), len(rs.Cautions))
	}
}

func BenchmarkRead500Rules(b *testing.B) {
	lib := Library{Embedded: large(b, 500)}
	b.ReportAllocs()
	for b.Loop() {
		if rs, diags := lib.Ruleset("large"); rs == nil {
			b.Fatal(diags.Text())
		}
	}
}

func BenchmarkReadVocabulary(b *testing.B) {
	lib := Library{Embedded: os.DirFS("../../rulesets")}
	b.ReportAllocs()
	for b.Loop() {
		if v, diags := lib.Vocabulary("lower_limb"); v == nil {
			b.Fatal(diags.Text())
		}
	}
}

package ruleset

import (
	"strings"
	"testing"
)

// base is a ruleset that others build on.
func base(name string, lines ...string) string {
	return headed(name, lines...) + `
finding "bent" {
  holds = "limb.knee_extension < deg(0)"
}
finding "bent_much" {
  holds = "finding.bent && limb.knee_extension < deg(-20)"
}
caution "care" {
  level = "note"
  when  = "finding.bent_much"
  says  = "At ${limb.knee_extension}; bent: ${finding.bent}."
  basis = "common_practice"
}
case "its own" {
  given { }
  expect "left" {
    findings = { bent = true }
  }
}
` + ruled("straighten", "finding.bent") + ruled("leave", "finding.bent_much", `overrides = ["straighten"]`)
}

func TestBuildsOn(t *testing.T) {
	rs := read(t, map[string]string{
		"bad/a.hcl": headed("bad", `builds_on = ["base@1"]`) + ruled("own", "finding.base.bent && !finding.bent", `overrides = ["base.leave"]`) +
			"finding \"bent\" {\n  holds = \"other.knee_extension < deg(0)\"\n}\ncase \"mine\" {\n  given { }\n  expect \"left\" {\n    findings = { bent = true, \"base.bent\" = false }\n  }\n}\n",
		"base/a.hcl": base("base"),
	})
	if got := ruleNames(rs); got != "base.leave base.straighten own" {
		t.Errorf("rules %s", got)
	}
	if len(rs.Parts) != 2 || rs.Parts[0].Name != "base" || rs.Parts[0].Root || rs.Parts[1].Name != "bad" || !rs.Parts[1].Root || rs.Name != "bad" {
		t.Errorf("parts %+v", rs.Parts)
	}
	if len(rs.Cases) != 1 || rs.Cases[0].Name != "mine" {
		t.Errorf("cases %v", rs.Cases)
	}
	if len(rs.Cautions) != 1 || rs.Cautions[0].Name != "base.care" || !rs.Cautions[0].Limb {
		t.Errorf("cautions %v", rs.Cautions)
	}
	own := rs.Rule("own")
	if len(own.Overrides) != 1 || own.Overrides[0] != rs.Rule("base.leave") {
		t.Errorf("own overrides %v", own.Overrides)
	}
	if leave := rs.Rule("base.leave"); len(leave.Overrides) != 1 || leave.Overrides[0].Name != "base.straighten" {
		t.Errorf("base.leave overrides %v", leave.Overrides)
	}
	reads := own.When.Reads
	if len(reads) != 2 || reads[0].Fact.Name != "base.bent" || reads[1].Fact.Name != "bent" || reads[1].Fact.Part != rs.Parts[1] {
		t.Errorf("own reads %+v", reads)
	}
}

// A ruleset that is met twice counts once, and its names are the same however deep it stands.
func TestBuildsOnInADiamond(t *testing.T) {
	side := func(name string) string {
		return headed(name, `builds_on = ["base"]`) + "finding \"f\" {\n  holds = \"finding.base.bent\"\n}\n"
	}
	rs := read(t, map[string]string{
		"bad/a.hcl":   headed("bad", `builds_on = ["left", "right"]`) + ruled("own", "finding.left.f && finding.right.f && finding.base.bent"),
		"left/a.hcl":  side("left"),
		"right/a.hcl": side("right"),
		"base/a.hcl":  base("base"),
	})
	var parts, facts []string
	for _, p := range rs.Parts {
		parts = append(parts, p.Name)
	}
	for _, f := range rs.Facts {
		facts = append(facts, f.Path())
	}
	if got := strings.Join(parts, " "); got != "base left right bad" {
		t.Errorf("parts %s", got)
	}
	if got := strings.Join(facts, " "); got != "finding.base.bent finding.base.bent_much finding.left.f finding.right.f" {
		t.Errorf("facts %s", got)
	}
}

func TestBuildsOnTwoVersions(t *testing.T) {
	old := strings.Replace(headed("left", `builds_on = ["base@2"]`), "1.0.0", "1.0.0", 1)
	_, diags := Library{Embedded: withLibrary(t, files(map[string]string{
		"bad/a.hcl":  headed("bad", `builds_on = ["base@1", "left"]`),
		"left/a.hcl": old,
		"base/a.hcl": base("base"),
	}))}.Ruleset("bad")
	if len(diags) != 1 || diags[0].Code != "version" || diags[0].Where.String() != "rulesets/left/a.hcl:6:15" {
		t.Errorf("%s", diags.Text())
	}
}

func TestExcept(t *testing.T) {
	rs := read(t, map[string]string{
		"bad/a.hcl": headed("bad", `builds_on = ["base"]`) + ruled("own", "true", `overrides = ["base.straighten"]`) +
			"except \"base.straighten\" {\n  because = \"Our clinic does not.\"\n}\nexcept \"base.care\" {\n  because = \"Known.\"\n}\n",
		"base/a.hcl": base("base"),
	})
	if got := ruleNames(rs); got != "base.leave own" || len(rs.Cautions) != 0 {
		t.Errorf("rules %s, cautions %v", got, rs.Cautions)
	}
	if len(rs.Excepts) != 2 || rs.Excepts[0].Name != "base.straighten" || rs.Excepts[0].Because != "Our clinic does not." {
		t.Errorf("excepts %+v", rs.Excepts)
	}
	for _, r := range rs.Rules {
		if len(r.Overrides) != 0 {
			t.Errorf("%s still overrides %s", r.Name, r.Overrides[0].Name)
		}
	}
}

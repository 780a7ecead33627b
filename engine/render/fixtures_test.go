package render

import (
	"os"
	"testing"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/source"
	"crus/engine/vocab"
)

// small reads the vocabulary of these tests.
func small(t testing.TB) *vocab.Vocabulary {
	t.Helper()
	src, err := os.ReadFile("testdata/vocabulary.hcl")
	if err != nil {
		t.Fatal(err)
	}
	v, diags := vocab.Parse([]*source.File{source.NewFile("vocabulary.hcl", src)})
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	return v
}

func citations() map[string]*vocab.Citation {
	return map[string]*vocab.Citation{
		"author_2001":      {Key: "author_2001", Text: "Author A. A made-up source for this test. Journal 2001;1:1-9.", DOI: "10.0000/made-up.1", Standing: "read"},
		"author_2002":      {Key: "author_2002", Text: "Author B. Another made-up source, whose title is long enough that it has to run on into a second line. Journal 2002;2:10-19.", URL: "https://example.org/made-up/2", Standing: "second_hand"},
		"skin.author_2003": {Key: "author_2003", Text: "Author C. A third made-up source.", Standing: "from_memory"},
	}
}

// step makes a step of a trace.
func step(text string, v ref.Val, inner ...*reason.Step) *reason.Step {
	return &reason.Step{Written: &reason.Written{Text: text, Place: "rules.hcl:10:12"}, Value: reason.Value{V: v}, Steps: inner}
}

func quantity(t testing.TB, x float64, code string) clinical.Quantity {
	t.Helper()
	u, ok := clinical.UnitByCode(code)
	if !ok {
		t.Fatalf("no unit %s", code)
	}
	q, err := clinical.NewQuantity(x, u)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func grade(t testing.TB, v *vocab.Vocabulary, scale, label string) clinical.Grade {
	t.Helper()
	g, ok := v.Scale(scale).Grade(label)
	if !ok {
		t.Fatalf("no grade %s", label)
	}
	return g
}

func unknown() ref.Val { return types.NewUnknown(1, nil) }

func ptr[T any](x T) *T { return &x }

func emptyResult() *reason.Result {
	return &reason.Result{Choices: map[string]*reason.Choice{}, Cautions: []*reason.Caution{}, Findings: map[string]*bool{}, Quantities: map[string]*reason.Measured{},
		Rules: map[string]*reason.Rule{}, Missing: []*reason.Missing{}, Traces: map[string]*reason.Trace{}}
}

func header(applies string) *reason.Outcome {
	return &reason.Outcome{
		Format:     reason.Format,
		Ruleset:    reason.Version{Name: "test_clinic", Title: "Ankle-foot orthosis, test clinic", Version: "1.2.0", Status: "draft", Digest: "sha256:3f2a91c0d5e8b7a6543210fedcba98763f2a91c0d5e8b7a6543210fedcba9876"},
		BuildsOn:   []reason.Version{{Name: "skin", Title: "Skin and sensation", Version: "1.0.0", Status: "active", Digest: "sha256:00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff"}},
		Vocabulary: reason.Version{Name: "small", Title: "Small vocabulary for tests", Version: "1.0.0", Digest: "sha256:ffeeddccbbaa99887766554433221100ffeeddccbbaa99887766554433221100"},
		Assessment: reason.About{ID: "demo-017", Date: "2026-10-02", Assessor: "orthotist, AB", DeviceFor: []string{"left", "right"}},
		Applies:    applies,
		Notices: append(reason.Cautions(), "test_clinic 1.2.0 is past its review date, 2026-06-30.", "test_clinic 1.2.0 is a draft: it has not been put in force.",
			"skin.driving is left out here: the clinic gives this advice on its own sheet.", "Whether a result lies close to a boundary within measurement error was not looked at."),
	}
}

// everyStatus has both sides and every status, with provisional ones, a conflict and pending cautions.
func everyStatus(t testing.TB, v *vocab.Vocabulary) *reason.Outcome {
	o := header("yes")
	o.Limbs = map[string]*reason.Result{"left": leftLimb(t, v), "right": rightLimb(t, v)}
	p := emptyResult()
	p.Choices["review_interval"] = &reason.Choice{Status: reason.Default, Value: 6.0, Unit: "wk", Interval: &[2]float64{1, 52}}
	p.Cautions = []*reason.Caution{{Name: "driving", Level: "note", State: reason.Fired, Says: "A device on the right can change how the pedals are felt.", Act: "Ask whether the person drives.", Basis: "common_practice",
		Trace: &reason.Trace{Place: "rules.hcl:90:1", When: step("person.age >= years(16)", types.True, step("person.age", quantity(t, 61, "a")))}}}
	p.Findings["adult"] = ptr(true)
	p.Traces["finding.adult"] = &reason.Trace{Place: "rules.hcl:5:1", When: step("person.age >= years(16)", types.True, step("person.age", quantity(t, 61, "a")))}
	o.Person = p
	return o
}

func leftLimb(t testing.TB, v *vocab.Vocabulary) *reason.Result {
	r := emptyResult()
	tone := step("limb.plantarflexor_tone", grade(t, v, "modified_ashworth", "2"))
	range_ := step("limb.ankle_dorsiflexion_knee_extended", quantity(t, -5, "deg"))
	r.Findings["marked_tone"], r.Findings["range_limited"], r.Findings["heel_stays_up"], r.Findings["skin.insensate"] = ptr(true), ptr(true), nil, ptr(false)
	r.Quantities["pitch"], r.Quantities["reserve"] = &reason.Measured{Value: 6.2, Unit: "deg"}, nil
	r.Traces["finding.marked_tone"] = &reason.Trace{Place: "rules.hcl:12:1", When: step("limb.plantarflexor_tone >= modified_ashworth('2')", types.True, tone), Because: "A grade of 2 resists through most of the range."}
	r.Traces["finding.range_limited"] = &reason.Trace{Place: "rules.hcl:18:1", When: step("limb.ankle_dorsiflexion_knee_extended <= deg(0)", types.True, range_)}
	r.Traces["finding.heel_stays_up"] = &reason.Trace{Place: "rules.hcl:24:1", When: step("!limb.heel_down", unknown(), step("limb.heel_down", unknown()))}
	r.Traces["quantity.pitch"] = &reason.Trace{Place: "rules.hcl:30:1", When: step("deg(6.2)", quantity(t, 6.2, "deg"))}
	r.Traces["quantity.reserve"] = &reason.Trace{Place: "rules.hcl:34:1", When: step("limb.hip_extension / 0.0", types.NewErr("division by zero"), step("limb.hip_extension", unknown()))}
	r.Traces["caution.skin.swelling"] = &reason.Trace{Place: "skin.hcl:40:1", When: step("false", types.False)}

	r.Rules["raise_trimline_for_tone"] = &reason.Rule{State: reason.Fired, Strength: "strong", Basis: "published", Cites: []string{"author_2001", "author_2002"},
		Because: "Tone of 2 with −5° of dorsiflexion asks for more leverage in front of the ankle than a trim-line behind the malleoli gives.",
		Trace: &reason.Trace{Place: "rules.hcl:40:1", When: step("finding.marked_tone && finding.range_limited", types.True, step("finding.marked_tone", types.True), step("finding.range_limited", types.True)),
			Unless: step("limb.protective_sensation == 'absent'", types.False, step("limb.protective_sensation", types.String("reduced"))),
			Advises: []reason.Effect{{Choice: "shell_trimline", Verb: "at_least", Options: []string{"in_front_of_malleoli"}, Did: "Removed behind malleoli and through malleoli."},
				{Choice: "closure", Verb: "favour", Options: []string{"anterior_shell"}, Did: "Favoured anterior shell."}}}}
	r.Rules["low_trimline_for_comfort"] = &reason.Rule{State: reason.Fired, Strength: "conditional", Basis: "common_practice", Because: "A low edge is easier to put on.",
		Trace: &reason.Trace{Place: "rules.hcl:52:1", When: step("person.age >= years(60)", types.True, step("person.age", quantity(t, 61, "a"))),
			Advises: []reason.Effect{{Choice: "shell_trimline", Verb: "at_most", Options: []string{"through_malleoli"}, Did: "Removed in front of malleoli."},
				{Choice: "closure", Verb: "favour", Options: []string{"wide_padded_strap"}, Did: "Favoured wide padded strap."}}}}
	r.Rules["cast_in_reached_position"] = &reason.Rule{State: reason.Fired, Strength: "strong", Basis: "from_memory", Because: "A cast is never taken in a position that the ankle can't get into.",
		Trace: &reason.Trace{Place: "rules.hcl:60:1", When: step("finding.range_limited", types.True),
			Advises: []reason.Effect{{Choice: "cast_ankle_angle", Verb: "at_most", Formula: range_, Did: "Not above −5°."}, {Choice: "cast_ankle_angle", Verb: "aim", Formula: range_, Did: "Aimed at −5°."}}}}
	r.Rules["block_for_heel"] = &reason.Rule{State: reason.Pending, WaitsFor: []string{"limb.heel_down", "other.heel_down"}, Strength: "strong", Basis: "common_practice", Because: "The block is raised until the foot is supported.",
		Trace: &reason.Trace{Place: "rules.hcl:70:1", When: step("finding.heel_stays_up", unknown(), step("finding.heel_stays_up", unknown())),
			Advises: []reason.Effect{{Choice: "cast_block_height", Verb: "aim", Formula: step("mm(22)", quantity(t, 22, "mm")), Did: "Nothing: the rule is pending."}}}}
	r.Rules["strap_for_hand"] = &reason.Rule{State: reason.SetAside, SetAsideBy: []string{"raise_trimline_for_tone"}, Strength: "conditional", Basis: "common_practice", Because: "A strap can be closed with one hand."}
	r.Rules["skin.wide_strap"] = &reason.Rule{State: reason.DidNotFire, Strength: "strong", Basis: "published", Cites: []string{"author_2003"}, Because: "Spread the load.",
		Trace: &reason.Trace{Place: "skin.hcl:12:1", When: step("finding.insensate", types.False, step("finding.insensate", types.False))}}

	r.Choices["device"] = &reason.Choice{Status: reason.Settled, Value: "composite", NearBoundary: ptr(true), Options: []reason.Option{
		{Option: "no_device", State: reason.Removed, Why: "Removed by raise_trimline_for_tone.", By: []string{"raise_trimline_for_tone"}},
		{Option: "composite", State: reason.Picked, Why: "Ahead."},
		{Option: "rigid", State: reason.Outweighed, Why: "Still possible, but no rule favours it; the one ahead has 1 strong."},
		{Option: "refer_wound_care", State: reason.Outweighed, Why: "Still possible, but no rule favours it; the one ahead has 1 strong."}}}
	r.Choices["cast_ankle_angle"] = &reason.Choice{Status: reason.Settled, Value: -5.0, Unit: "deg", Interval: &[2]float64{-45, -5},
		Numbers: []reason.Number{{Rule: "cast_in_reached_position", Verb: "at_most", Value: -5, Strength: "strong", State: "limit"},
			{Rule: "cast_in_reached_position", Verb: "aim", Value: -5, Strength: "strong", State: "decides"},
			{Rule: "low_trimline_for_comfort", Verb: "aim", Value: 0, Strength: "conditional", State: reason.Outweighed, Moved: ptr(-5.0)}}}
	r.Choices["cast_block_height"] = &reason.Choice{Status: reason.IsOpen, Unit: "mm", Provisional: true, Interval: &[2]float64{10, 30}, Range: &[2]float64{16, 22},
		CouldBecome: []reason.Could{{Status: reason.Settled, Value: 22.0, If: "Heel down in standing is no", When: heelDown("no")}, {Status: reason.IsOpen, Value: [2]float64{10, 30}, If: "Heel down in standing is yes", When: heelDown("yes")}},
		Explored:    &reason.Explored{Tried: 65536, Of: "1220703125", Complete: false},
		Numbers:     []reason.Number{{Rule: "a_aim", Verb: "aim", Value: 16, Strength: "strong", State: "decides"}, {Rule: "b_aim", Verb: "aim", Value: 22, Strength: "strong", State: "decides"}}}
	r.Choices["strut_stiffness"] = &reason.Choice{Status: reason.IsOpen, Unit: "N.m/deg", Interval: &[2]float64{3.1, 4.4}}
	r.Choices["strut_place"] = toClinician()
	r.Choices["foot_plate_length"] = &reason.Choice{Status: reason.Default, Value: "full_length"}
	r.Choices["shell_side"] = &reason.Choice{Status: reason.Settled, Value: "anterior", Provisional: true,
		CouldBecome: []reason.Could{{Status: reason.Settled, Value: "posterior", If: "Heel down in standing is no", When: heelDown("no")}}}
	r.Choices["closure"] = &reason.Choice{Status: reason.IsOpen, Among: []string{"wide_padded_strap", "anterior_shell"}, Options: []reason.Option{
		{Option: "strap", State: reason.Removed, By: []string{"skin.wide_strap"}, Why: "Removed by skin.wide_strap."},
		{Option: "wide_padded_strap", State: reason.Level, Why: "Level with the others: favoured by low_trimline_for_comfort (1 conditional)."},
		{Option: "anterior_shell", State: reason.Level, Why: "Level with the others: favoured by raise_trimline_for_tone (1 strong)."}}}
	r.Choices["shell_trimline"] = &reason.Choice{Status: reason.Conflict, Conflict: []string{"low_trimline_for_comfort", "raise_trimline_for_tone"}, Options: []reason.Option{
		{Option: "behind_malleoli", State: reason.Removed, By: []string{"raise_trimline_for_tone"}, Why: "Removed by raise_trimline_for_tone."},
		{Option: "through_malleoli", State: reason.Removed, By: []string{"raise_trimline_for_tone"}, Why: "Removed by raise_trimline_for_tone."},
		{Option: "in_front_of_malleoli", State: reason.Removed, By: []string{"low_trimline_for_comfort"}, Favoured: []string{"raise_trimline_for_tone"}, Why: "Favoured by raise_trimline_for_tone, but removed by low_trimline_for_comfort."}}}
	r.Choices["padding"] = &reason.Choice{Status: reason.Unanswered}

	r.Cautions = []*reason.Caution{
		{Name: "skin.insensate_under_shell", Level: "contraindication", State: reason.Pending, Provisional: true, Says: "The person cannot feel a shell that rubs.", Act: "Test sensation before casting.", Basis: "published", Cites: []string{"author_2003"}, WaitsFor: []string{"limb.heel_down"},
			CouldBecome: []reason.Could{{Status: reason.Fired, If: "Heel down in standing is no", When: heelDown("no")}, {Status: reason.DidNotFire, If: "Heel down in standing is yes", When: heelDown("yes")}},
			Trace:       &reason.Trace{Place: "skin.hcl:30:1", When: step("limb.heel_down", unknown())}},
		{Name: "strong_tone", Level: "precaution", State: reason.Fired, Says: "Strong tone loads the heel and the dorsum of the foot.", Act: "Check both for redness after the first hour.", Basis: "from_memory",
			Trace: &reason.Trace{Place: "rules.hcl:80:1", When: step("finding.marked_tone", types.True)}},
	}
	r.Cautions = append(r.Cautions, firstWear())
	r.Missing = []*reason.Missing{
		{Measure: "limb.heel_down", Label: "Heel down in standing", Taken: "standing", Reason: "could not stand without support", Decides: []string{"cast_block_height", "shell_side", "caution.skin.insensate_under_shell"}, Settles: 2},
		{Measure: "other.heel_down", Label: "Heel down in standing (right)", Taken: "standing", Decides: []string{"cast_block_height"}},
	}
	r.Immaterial = []string{"limb.hip_extension"}
	return r
}

// toClinician is a choice that both limbs leave to the clinician in the same words.
func toClinician() *reason.Choice {
	return &reason.Choice{Status: reason.LeftToClinician, Because: "No published comparison was found.", Consider: []string{"room in the shoe", "width of the hand that closes it"}}
}

// firstWear is a caution that both limbs have alike.
func firstWear() *reason.Caution {
	return &reason.Caution{Name: "first_wear", Level: "note", State: reason.Fired, Says: "The first wear is short.", Basis: "common_practice", Cites: []string{"author_2001"}}
}

func rightLimb(t testing.TB, v *vocab.Vocabulary) *reason.Result {
	r := emptyResult()
	r.Rules["wound_first"] = &reason.Rule{State: reason.Fired, Strength: "strong", Basis: "published", Cites: []string{"missing_2004"}, Because: "An open wound is cared for before a device is cast.",
		Trace: &reason.Trace{Place: "rules.hcl:100:1", When: step("limb.plantarflexor_tone >= modified_ashworth('1')", types.True, step("limb.plantarflexor_tone", grade(t, v, "modified_ashworth", "1+"))),
			Advises: []reason.Effect{{Choice: "device", Verb: "only", Options: []string{"refer_wound_care"}, Did: "Removed no device, composite and rigid."}}}}
	r.Choices["device"] = &reason.Choice{Status: reason.Settled, Value: "refer_wound_care", Options: []reason.Option{
		{Option: "no_device", State: reason.Removed, By: []string{"wound_first"}, Why: "Removed by wound_first."},
		{Option: "refer_wound_care", State: reason.Picked, Why: "The only one that the limits leave."}}}
	r.Choices["cast_ankle_angle"] = &reason.Choice{Status: reason.Conflict, Unit: "deg", Conflict: []string{"wound_first"},
		Numbers: []reason.Number{{Rule: "wound_first", Verb: "at_least", Value: 5, Strength: "strong", State: "limit"}, {Rule: "wound_first", Verb: "at_most", Value: 0, Strength: "strong", State: "limit"}}}
	r.Choices["closure"] = &reason.Choice{Status: reason.Unanswered, Provisional: true, CouldBecome: []reason.Could{{Status: reason.Settled, Value: "strap", If: "Heel down in standing is yes", When: heelDown("yes")}}}
	r.Choices["padding"] = &reason.Choice{Status: reason.Unanswered}
	r.Choices["strut_place"], r.Choices["foot_plate_length"] = toClinician(), &reason.Choice{Status: reason.Unanswered}
	r.Cautions = []*reason.Caution{
		{Name: "wound", Level: "contraindication", State: reason.Fired, Says: "There is an open wound where the shell bears.", Act: "No device over it until it has healed.", Basis: "published", Cites: []string{"author_2001"}},
		{Name: "strong_tone", Level: "precaution", State: reason.Fired, Says: "Strong tone loads the heel and the dorsum of the foot.", Act: "Check both for redness after the first hour.", Basis: "from_memory"},
	}
	r.Cautions = append(r.Cautions, firstWear())
	r.Missing = []*reason.Missing{{Measure: "limb.heel_down", Label: "Heel down in standing", Taken: "standing", Decides: []string{"closure"}, Settles: 1}}
	return r
}

// oneSide is a plain case: one limb, everything settled, nothing missing.
func oneSide(t testing.TB, v *vocab.Vocabulary) *reason.Outcome {
	o := header("yes")
	o.Assessment.DeviceFor = []string{"right"}
	o.Notices = reason.Cautions()
	o.Limbs = map[string]*reason.Result{"right": rightLimb(t, v)}
	r := o.Limbs["right"]
	r.Missing, r.Cautions = nil, nil
	delete(r.Choices, "closure")
	delete(r.Choices, "cast_ankle_angle")
	return o
}

// notForThem does not apply.
func notForThem(t testing.TB, _ *vocab.Vocabulary) *reason.Outcome {
	o := header("no")
	o.Scope = &reason.Trace{Place: "ruleset.hcl:9:14", When: step("person.age >= years(16)", types.False, step("person.age", quantity(t, 9, "a")))}
	return o
}

// perhaps applies or does not.
func perhaps(t testing.TB, v *vocab.Vocabulary) *reason.Outcome {
	o := oneSide(t, v)
	o.Applies, o.WaitsFor = "unknown", []string{"person.age"}
	o.Scope = &reason.Trace{Place: "ruleset.hcl:9:14", When: step("person.age >= years(16)", unknown(), step("person.age", unknown()))}
	for _, c := range o.Limbs["right"].Choices {
		c.Provisional = true
	}
	o.Notices = append(o.Notices, "It is not known whether this ruleset applies to the person, so everything here is provisional. It waits for: person.age.")
	return o
}

// outcomes are all that the golden files show.
func outcomes(t testing.TB, v *vocab.Vocabulary) map[string]*reason.Outcome {
	return map[string]*reason.Outcome{
		"every_status":   everyStatus(t, v),
		"one_side":       oneSide(t, v),
		"does_not_apply": notForThem(t, v),
		"may_not_apply":  perhaps(t, v),
	}
}

// heelDown is the condition that the heel's contact in standing is so.
func heelDown(is string) []reason.Cell { return []reason.Cell{{Measure: "limb.heel_down", Is: is}} }

package rulesets_test

import (
	"slices"
	"testing"

	"crus/engine/assess"
	"crus/engine/reason"
)

// Where published advice disagrees, both sides are in the ruleset at equal strength, a worked case shows the
// result open (or in conflict) between them, and a caution in force there names two sources (one where the other
// side is a habit that none is behind).
func TestDisagreementsStayOpen(t *testing.T) {
	byName := map[string]*reason.Engine{}
	for _, e := range starters(t) {
		byName[e.Ruleset().Name] = e
	}
	for _, d := range []struct {
		about, ruleset, choice string
		one, other             string // rules
		caution                string
	}{
		{"a ground-reaction device with a contracted knee", "spastic_gait_afo", "device", "surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture", "contracture_limit_disputed"},
		{"how long redness may last", "limb_safety", "skin_check", "redness_limit_of_twenty_minutes", "redness_limit_of_thirty_minutes", "redness_limits_differ"},
		{"a device by day in Duchenne dystrophy", "calf_weakness_afo", "device", "no_day_device_in_duchenne", "articulated_day_device_in_duchenne", "duchenne_views_differ"},
		{"true equinus in cerebral palsy", "spastic_gait_afo", "device", "spring_or_hinge_for_true_equinus", "hold_where_a_hinge_is_disputed", "hinge_or_hold"},
		{"range cut-offs in cerebral palsy", "spastic_gait_afo", "device", "cast_a_young_short_calf", "spring_or_hinge_for_true_equinus", "range_decides_alone"},
		{"stiffness by body mass, calf weakness", "calf_weakness_afo", "strut_stiffness", "stiffness_by_body_mass", "softer_than_by_body_mass", "try_several_stiffnesses"},
		{"stiffness by body mass, composite", "composite_design", "strut_stiffness", "stiffness_by_body_mass", "softer_than_by_body_mass", "mass_and_measured_best_disagree"},
		{"composite on a leg that swells", "limb_safety", "device", "composite_for_a_leg_that_swells", "jointed_device_for_a_leg_that_swells", "swelling_sources_differ"},
		{"first device after a stroke", "stroke_afo", "device", "light_device_first", "rigid_device_at_once", "light_or_rigid_first"},
		{"device or stimulation after a stroke", "stroke_afo", "device", "light_device_for_low_tone_drop", "stimulation_does_as_well", "device_or_stimulation"},
	} {
		t.Run(d.about, func(t *testing.T) {
			t.Parallel()
			e := byName[d.ruleset]
			for _, c := range e.Ruleset().Cases {
				a, diags := assess.Given(c.Given, e.Ruleset().Vocabulary)
				if diags.HasErrors() {
					t.Fatal(diags.Text())
				}
				o := e.Advise(a, today)
				for _, r := range results(o) {
					choice := r.Choices[d.choice]
					if choice == nil || choice.Status != reason.IsOpen && choice.Status != reason.Conflict {
						continue
					}
					one, other := ruleOf(o, d.one), ruleOf(o, d.other)
					if one == nil || other == nil || one.State != reason.Fired || other.State != reason.Fired || !speaks(choice, d.one) || !speaks(choice, d.other) {
						continue
					}
					if one.Strength != other.Strength {
						t.Errorf("%s is %s and %s is %s", d.one, one.Strength, d.other, other.Strength)
					}
					names := cautionOf(o, d.caution)
					if names == nil || names.State != reason.Fired {
						continue
					}
					sources := 2
					if len(one.Cites) == 0 || len(other.Cites) == 0 {
						sources = 1
					}
					if len(names.Cites) >= sources && meet(names.Cites, append(slices.Clone(one.Cites), other.Cites...)) {
						return
					}
				}
			}
			t.Errorf("no worked case of %s leaves %s open between %s and %s with %s naming both sources", d.ruleset, d.choice, d.one, d.other, d.caution)
		})
	}
}

func ruleOf(o *reason.Outcome, name string) *reason.Rule {
	for _, r := range results(o) {
		if x := r.Rules[name]; x != nil && x.State == reason.Fired {
			return x
		}
	}
	return nil
}

func cautionOf(o *reason.Outcome, name string) *reason.Caution {
	for _, r := range results(o) {
		for _, c := range r.Cautions {
			if c.Name == name {
				return c
			}
		}
	}
	return nil
}

// speaks reports whether a rule favours an option that is level, or makes one end of what is open.
func speaks(c *reason.Choice, rule string) bool {
	for _, o := range c.Options {
		if o.State == reason.Level && slices.Contains(o.By, rule) {
			return true
		}
	}
	for _, n := range c.Numbers {
		if n.Rule == rule && n.State == "decides" {
			return true
		}
	}
	return slices.Contains(c.Conflict, rule)
}

func meet(a, b []string) bool {
	return slices.ContainsFunc(a, func(x string) bool { return slices.Contains(b, x) })
}

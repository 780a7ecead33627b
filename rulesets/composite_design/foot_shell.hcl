# The foot shell: how far it wraps, what is strapped at the ankle, and the forces seen from above. What is relieved, the
# safety ruleset says.

rule "hold_forefoot_adduction" {
  when     = "limb.forefoot_adduction_corrects in ['fully', 'partly']"
  because  = "The forefoot turns in and comes straight (${limb.forefoot_adduction_corrects}): a high medial wall at the ball is one point, the cuboid and the heel are the others. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_transverse" { favour = "against_forefoot_adduction" }
  advise "foot_shell" { favour = "high_medial" }
}

rule "hold_forefoot_abduction" {
  when     = "finding.forefoot_abducted && limb.forefoot_adduction_corrects == 'none_needed' && limb.forefoot_corrects_standing in ['fully', 'partly']"
  because  = "The forefoot turns out (${limb.fpi_forefoot}) and comes back on standing: a high lateral wall is one point, navicular and heel are the others. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_transverse" { favour = "against_forefoot_abduction" }
  advise "foot_shell" { favour = "high_lateral" }
}

rule "take_a_stiff_forefoot_as_it_is" {
  when     = "limb.forefoot_adduction_corrects == 'not_at_all'"
  because  = "The forefoot turns in and does not come straight by hand: the shell follows it, and no three points push at it. Teaching says so of a fixed ankle; for the forefoot it is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["fixed_deformity_teaching"]

  advise "pressure_system_transverse" { only = "none" }
}

rule "no_force_on_a_straight_forefoot" {
  when     = "limb.forefoot_adduction_corrects == 'none_needed' && !finding.forefoot_abducted"
  because  = "The forefoot lies straight on the hindfoot: nothing pushes at it."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_transverse" { favour = "none" }
}

rule "wrap_a_midfoot_that_breaks" {
  when     = "limb.midfoot_break in ['slight', 'marked']"
  because  = "The midfoot bends before the ankle does (${limb.midfoot_break}): a dorsal wrap holds it down and the foot back in the shoe. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "foot_shell" { favour = "dorsal" }
}

rule "low_foot_shell_for_hands_without_help" {
  when     = "person.hand_function in ['one_hand', 'weak_grip', 'none'] && person.help_available == 'none'"
  because  = "The device goes on without help (hands: ${person.hand_function}), and a low foot shell is the easier to put on. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "foot_shell" { favour = "low" }
}

rule "strap_over_the_instep" {
  when     = "finding.foot_pulled_down && !finding.varus_in_stance && !finding.valgus_in_stance"
  because  = "A foot that is pulled down lifts its heel out of the shell. The instep takes ${quantity.force_at_instep}; in cadavers the least force held the heel where the strap sat high and pulled at an obtuse angle."
  strength = "conditional"
  basis    = "published"
  cites    = ["dorsal_control"]

  advise "ankle_strap" { favour = "instep" }
}

rule "wrap_for_a_foot_that_does_not_feel" {
  when     = "finding.foot_pulled_down && finding.limb_safety.insensate"
  because  = "Sensation is ${limb.protective_sensation}, and a strap over an instep that can't feel is an edge: a dorsal wrap holds the foot down and back with more surface. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" {
    never  = "instep"
    favour = "none"
  }
  advise "foot_shell" { favour = "dorsal" }
}

rule "no_ankle_strap_for_the_swing" {
  when     = "finding.swing_only && limb.gait_midstance_hindfoot == 'neutral'"
  because  = "The foot hangs and nothing pulls it down or sideways: the shoe holds the heel back. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" { favour = "none" }
}

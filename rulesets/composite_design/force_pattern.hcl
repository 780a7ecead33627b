# The pattern of forces at the shank: which three points, which side the shell is on, how it closes and how high it goes.
# An anterior shell stops the shank coming forward, a posterior one stops it going back and holds equinus.

# Seen from the side

rule "hold_the_shank_back" {
  when     = "finding.shank_falls_forward"
  because  = "The shank falls forward over the foot: a shell in front of it stops that, with the heel and the ball as the other two points. The higher its edge, the smaller the force. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_shank_advance" }
  advise "shell_side" {
    only   = ["anterior", "circumferential"]
    favour = "anterior"
  }
  advise "closure" { never = "anterior_shell" }
  advise "proximal_height" { favour = "tibial_tubercle" }
}

rule "hold_the_foot_up" {
  when     = "finding.foot_pulled_down"
  because  = "The calf pulls the foot down (tone ${limb.plantarflexor_tone}, range ${quantity.usable_range}): calf, instep and ball are the three points, with the shell behind. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_equinus" }
  advise "shell_side" {
    only   = ["posterior", "circumferential"]
    favour = "posterior"
  }
  advise "closure" { never = "posterior_shell" }
}

rule "stop_the_knee_going_back" {
  when     = "finding.knee_goes_back && !finding.shank_falls_forward && !finding.foot_pulled_down"
  because  = "The knee goes past straight and the calf does not pull: the shank goes back, and the shell behind stops it. With a foot that is pulled down the forces are those against equinus. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_knee_hyperextension" }
  advise "shell_side" {
    only   = ["posterior", "circumferential"]
    favour = "posterior"
  }
  advise "closure" { never = "posterior_shell" }
}

rule "carry_the_foot_in_swing" {
  when     = "finding.swing_only"
  because  = "Only the foot's weight has to be carried: a light hold, a strap, and a low foot shell that is easy to put on. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_foot_drop" }
  advise "closure" { favour = "strap" }
  advise "foot_shell" { favour = "low" }
}

# Seen from behind

rule "hold_the_varus" {
  when     = "finding.varus_in_stance && finding.hindfoot_comes_straight"
  because  = "The heel turns in and comes back on standing (${limb.hindfoot_corrects_standing}): three points hold it there, and a strap from the lateral side pulls with them. The strap is published; the points are common practice."
  strength = "conditional"
  basis    = "published"
  cites    = ["varus_strap"]

  advise "pressure_system_frontal" { favour = "against_varus" }
  advise "ankle_strap" { favour = "pull_from_lateral" }
}

rule "hold_the_valgus" {
  when     = "finding.valgus_in_stance && finding.hindfoot_comes_straight"
  because  = "The heel turns out and comes back on standing (${limb.hindfoot_corrects_standing}): the same three points mirrored, with a strap from the medial side. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_frontal" { favour = "against_valgus" }
  advise "ankle_strap" { favour = "pull_from_medial" }
}

rule "wall_for_a_varus_that_does_not_feel" {
  when     = "finding.varus_in_stance && finding.hindfoot_comes_straight && finding.limb_safety.insensate"
  because  = "Sensation is ${limb.protective_sensation}, and a strap that pulls over skin that can't feel is an edge: the force on the outer side is spread over a high lateral wall. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" { never = ["pull_from_lateral", "pull_from_medial"] }
  advise "foot_shell" { favour = "high_lateral" }
}

rule "wall_for_a_valgus_that_does_not_feel" {
  when     = "finding.valgus_in_stance && finding.hindfoot_comes_straight && finding.limb_safety.insensate"
  because  = "Sensation is ${limb.protective_sensation}, and a strap that pulls over skin that can't feel is an edge: the force on the inner side is spread over a high medial wall. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" { never = ["pull_from_lateral", "pull_from_medial"] }
  advise "foot_shell" { favour = "high_medial" }
}

rule "no_force_on_a_heel_in_line" {
  when     = "limb.gait_midstance_hindfoot == 'neutral'"
  because  = "The heel stays in line under load: nothing is held from the side."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_frontal" { favour = "none" }
}

# The shank shell: closure, edges, lining

rule "shells_for_tone" {
  when     = "finding.tone_with_little_range"
  because  = "Tone of ${limb.plantarflexor_tone} with a range to ${quantity.usable_range} asks for leverage and contact: a second shell rather than a strap, a higher edge, trim-lines in front of the malleoli. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { favour = ["anterior_shell", "posterior_shell"] }
  advise "proximal_height" { favour = "below_fibular_head" }
  advise "shell_trimline" { at_least = "in_front_of_malleoli" }
  advise "foot_shell" { favour = "dorsal" }
}

rule "pad_a_shell_in_front" {
  when     = "finding.shank_falls_forward && !finding.tone_with_little_range"
  because  = "The shell in front takes the force; what closes behind the calf has only to keep it there, and a wide padded strap does that softly. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { favour = "wide_padded_strap" }
}

rule "no_narrow_strap_under_a_large_force" {
  when     = "finding.ankle_is_held && quantity.strap_mean_pressure > kPa(13.7)"
  because  = "Alone, the strap would press ${quantity.strap_mean_pressure} on average, the shell ${quantity.shell_mean_pressure}. Healthy adults felt discomfort from 13.7 kPa held at the knee, so the force is spread."
  strength = "conditional"
  basis    = "published"
  cites    = ["kermavnar_2020"]

  advise "closure" { never = "strap" }
  advise "proximal_height" { favour = ["below_fibular_head", "tibial_tubercle", "patellar_tendon"] }
}

rule "line_skin_at_risk" {
  when     = "person.skin_risk in ['raised', 'high']"
  unless   = "finding.limb_safety.skin_needs_care"
  because  = "The skin is at ${person.skin_risk} risk: bony places at least are lined. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "padding" {
    at_least = "at_bony_places"
    favour   = "at_bony_places"
  }
}

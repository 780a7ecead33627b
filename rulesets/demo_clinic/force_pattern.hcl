# Force pattern and stiffness: where the shells go, how they close, and how far they wrap.

rule "hold_the_shank_back" {
  when     = "finding.shank_falls_forward"
  unless   = "finding.crouch_contracted"
  because  = "The shank falls forward over the foot (calf ${limb.plantarflexor_power}): a shell in front of it stops that, with a long stiff foot plate as the lever and a high upper edge to keep the force low."
  strength = "strong"
  basis    = "common_practice"

  advise "shell_side" {
    only   = ["anterior", "circumferential"]
    favour = "anterior"
  }
  advise "closure" {
    never  = "anterior_shell"
    favour = "wide_padded_strap"
  }
  advise "proximal_height" { favour = "tibial_tubercle" }
  advise "pressure_system" { favour = "against_shank_advance" }
  advise "foot_plate_length" { favour = "full_length" }
  advise "foot_plate_stiffness" { at_least = "firm" }
}

rule "hold_the_equinus" {
  when     = "finding.equinus || finding.marked_tone"
  because  = "A short or tight calf holds the heel up and the shank back (tone ${limb.plantarflexor_tone}, dorsiflexion ${limb.ankle_dorsiflexion_knee_extended}): a posterior shell, a hold over the instep and the foot plate work against it."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_side" { favour = "posterior" }
  advise "closure" { never = "posterior_shell" }
  advise "pressure_system" { favour = "against_equinus" }
}

rule "stop_the_knee_going_back" {
  when     = "finding.knee_thrown_back"
  because  = "The knee goes past straight, so the shank is stopped from behind and leaned forward rather than upright. The 10 deg is a demonstration value."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_side" { favour = "posterior" }
  advise "closure" { never = "posterior_shell" }
  advise "pressure_system" { favour = "against_knee_hyperextension" }
  advise "shank_to_vertical_target" { at_least = "deg(10)" }
}

rule "no_shell_on_broken_shin" {
  when     = "limb.anterior_shin_skin == 'broken'"
  because  = "The skin over the shin is broken, so no shell goes over it."
  strength = "strong"
  basis    = "common_practice"

  advise "shell_side" { never = ["anterior", "circumferential"] }
  advise "closure" { never = "anterior_shell" }
}

rule "no_side_until_the_shin_heals" {
  when      = "finding.shank_falls_forward && limb.anterior_shin_skin == 'broken'"
  unless    = "finding.crouch_contracted"
  because   = "The shank falls forward and asks for a shell in front of it, where the skin is broken. A shell behind would not hold it, so no side is picked: the wound is treated first."
  strength  = "strong"
  basis     = "common_practice"
  overrides = ["hold_the_shank_back", "hold_the_equinus", "stop_the_knee_going_back", "light_pattern_for_foot_drop", "no_shell_on_broken_shin"]

  advise "closure" { never = "anterior_shell" }
}

rule "more_contact_for_tone" {
  when      = "finding.marked_tone && limb.ankle_dorsiflexion_knee_extended <= deg(5)"
  unless    = "finding.demo_safety.swelling_marked"
  because   = "More tone (${limb.plantarflexor_tone}) with less range (${limb.ankle_dorsiflexion_knee_extended}) asks for more leverage and more contact: shells rather than straps, a dorsal wrap, a higher upper edge. Swelling of less than 5 % of the girth is taken up by the closure."
  strength  = "strong"
  basis     = "common_practice"
  overrides = ["demo_safety.strap_for_swelling"]

  advise "closure" { favour = ["anterior_shell", "posterior_shell"] }
  advise "foot_shell" { favour = "dorsal" }
  advise "proximal_height" {
    at_least = "below_fibular_head"
    favour   = "below_fibular_head"
  }
}

rule "light_pattern_for_foot_drop" {
  when     = "finding.foot_drop && !finding.spastic_calf && !finding.weak_calf"
  because  = "Only the foot's weight has to be carried in swing: a posterior shell with a strap and a low foot shell is light, and easy to put on."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_side" { favour = "posterior" }
  advise "closure" { favour = "strap" }
  advise "foot_shell" { favour = "low" }
  advise "pressure_system" { favour = "against_foot_drop" }
  advise "foot_plate_length" { favour = "to_toe_bases" }
}

rule "low_trimline_for_foot_drop" {
  when     = "finding.foot_drop"
  because  = "A trim-line behind the malleoli leaves the ankle some give and the shoe some room."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_trimline" { favour = "behind_malleoli" }
}

rule "raise_trimline_for_tone" {
  when      = "finding.marked_tone && limb.ankle_dorsiflexion_knee_extended <= deg(5)"
  because   = "Tone of ${limb.plantarflexor_tone} with ${limb.ankle_dorsiflexion_knee_extended} of dorsiflexion: a trim-line in front of the malleoli keeps the shell from opening."
  strength  = "strong"
  basis     = "common_practice"
  overrides = ["low_trimline_for_foot_drop"]

  advise "shell_trimline" { at_least = "in_front_of_malleoli" }
}

rule "stay_behind_a_broken_malleolus" {
  when      = "limb.malleolar_skin == 'broken'"
  because   = "The skin over a malleolus is broken: the shell stays behind it, whatever the tone asks for."
  strength  = "strong"
  basis     = "common_practice"
  overrides = ["raise_trimline_for_tone"]

  advise "shell_trimline" { only = "behind_malleoli" }
}

rule "spare_the_malleoli" {
  when     = "limb.malleolar_skin in ['fragile', 'red_after_pressure', 'broken']"
  because  = "The skin over the malleoli is ${limb.malleolar_skin}: no edge and no pulling strap runs over them, and the shell is relieved there."
  strength = "strong"
  basis    = "common_practice"

  advise "shell_trimline" { never = "through_malleoli" }
  advise "ankle_strap" { only = ["none", "instep"] }
  advise "relief" { favour = "malleoli" }
}

rule "line_skin_at_risk" {
  when     = "person.skin_risk in ['raised', 'high']"
  because  = "The skin is at ${person.skin_risk} risk, so the shell is lined over bony places at least."
  strength = "conditional"
  basis    = "common_practice"

  advise "padding" {
    at_least = "at_bony_places"
    favour   = "at_bony_places"
  }
}

rule "low_foot_shell_for_one_hand" {
  when     = "person.hand_function in ['one_hand', 'weak_grip', 'none'] && person.help_available == 'none'"
  because  = "The device goes on without help (hands: ${person.hand_function}), and a low foot shell is the one that can be stepped into."
  strength = "conditional"
  basis    = "common_practice"

  advise "foot_shell" { favour = "low" }
}

rule "hold_varus" {
  when     = "finding.varus_in_stance && limb.hindfoot_corrects_standing in ['fully', 'partly']"
  because  = "The heel turns in and can be brought back in standing (${limb.hindfoot_corrects_standing}): three points against varus hold what was corrected, and a strap from the lateral side helps."
  strength = "conditional"
  basis    = "published"
  cites    = ["varus_strap"]

  advise "pressure_system_frontal" { favour = "against_varus" }
  advise "ankle_strap" { favour = "pull_from_lateral" }
}

clinician_decides "strut_stiffness" {
  because = "No published formula gives the stiffness from body mass, activity or the grade of a muscle: what was recommended by mass and activity matched the measured best in 8 of 34 people."
  consider = [
    "The softest strut that does the task: body mass ${person.body_mass}, activity ${person.activity_demand}",
    "The calf's tone (${limb.plantarflexor_tone}): a strut that lifts the foot has to be stiffer than it",
    "Two or three stiffnesses tried in walking before the device is finished",
    "The bench on which a stated stiffness was measured: benches differ by a quarter and more",
  ]
}

clinician_decides "strut_place" {
  because  = "No published comparison of places for the strut was found."
  consider = ["Room in the shoe", "Skin over the Achilles tendon: ${limb.achilles_skin}", "Varus or valgus that a strut at the side would resist"]
}

clinician_decides "sole_profile" {
  because  = "It is settled at the fitting, with the device in the shoe."
  consider = ["A cushioned or bevelled heel where the knee is pushed forward in loading", "A rocker where the foot plate is stiff and long"]
}

# Which family of device. Each pattern has one voice; where published advice disagrees, each side has one, of the same
# strength. The tables and the experience that they rest on were hardly ever tried against each other: conditional.

rule "spring_or_hinge_for_drop_foot" {
  when     = "finding.drop_foot"
  because  = "The foot hangs in swing (${limb.gait_swing_ankle}), stance is as usual and the calf reaches ${limb.ankle_dorsiflexion_knee_extended}: only the swing needs help. Neither an injection nor a lengthening of the calf goes with it."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns", "pattern_teaching"]

  advise "device" { favour = ["posterior_leaf_spring", "articulated"] }
  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "spring_or_hinge_for_true_equinus" {
  when     = "finding.true_equinus"
  because  = "The calf holds the foot down in stance and the knee is not bent (${limb.gait_midstance_knee}), so plantarflexion is stopped and dorsiflexion left free. It goes with a talk about injecting or lengthening the calf."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns", "nice_spasticity"]

  advise "device" { favour = ["posterior_leaf_spring", "articulated"] }
  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "hold_where_a_hinge_is_disputed" {
  when     = "finding.hinge_disputed"
  because  = "Dorsiflexion ${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}, midfoot break ${limb.midfoot_break}, knee late in stance ${limb.gait_terminal_stance_knee}, hip ${limb.gait_terminal_stance_hip}: at a free hinge the foot would give instead of the ankle, or nothing would hold knee and hip. So the ankle is held. From memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2014", "nice_spasticity"]

  advise "device" { favour = "rigid" }
  advise "articulation" { favour = "none" }
}

rule "hinge_for_type_2" {
  when     = "finding.type_2 && finding.dorsiflexion_may_be_free"
  because  = "One side, with a foot that hangs and a tight calf, and the range is there (${limb.ankle_dorsiflexion_knee_extended}): a hinge with a plantarflexion stop. Where it is not there, range comes first."
  strength = "conditional"
  basis    = "published"
  cites    = ["pattern_teaching", "rodda_graham_2001"]

  advise "device" { favour = "articulated" }
  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "three_devices_for_jump" {
  when     = "finding.jump && !finding.push_of_the_calf_lost"
  because  = "Equinus with knee and hip too flexed, and the knee still straightens late in stance (${limb.gait_terminal_stance_knee}): a hinge, a spring and a rigid device are all paired with it."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns"]

  advise "device" { favour = ["articulated", "posterior_leaf_spring", "rigid"] }
}

rule "rigid_where_the_push_is_lost" {
  when     = "(finding.jump || finding.type_3) && finding.push_of_the_calf_lost"
  because  = "The calf does not straighten the knee late in stance (knee ${limb.gait_terminal_stance_knee}, midfoot break ${limb.midfoot_break}); a hinge would let the shank come forward, so the ankle is held. From memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["rodda_graham_2001", "nice_spasticity"]

  advise "device" { favour = "rigid" }
  advise "articulation" { favour = "none" }
}

rule "hinge_for_type_3" {
  when     = "finding.type_3 && !finding.push_of_the_calf_lost"
  because  = "One side, equinus and a bent knee with the hip free, and the knee still straightens late in stance (${limb.gait_terminal_stance_knee}): a hinge will do. Teaching and memory, no trial."
  strength = "conditional"
  basis    = "published"
  cites    = ["pattern_teaching", "rodda_graham_2001"]

  advise "device" { favour = "articulated" }
  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "rigid_or_ground_reaction_for_type_4" {
  when      = "finding.type_4"
  because   = "One side with ankle, knee and hip all taken in (knee ${limb.gait_midstance_knee}, hip ${limb.gait_terminal_stance_hip}): more control than a hinge or a spring gives. Teaching and memory, no trial."
  strength  = "conditional"
  basis     = "published"
  cites     = ["pattern_teaching", "rodda_graham_2001"]
  overrides = ["three_devices_for_jump", "rigid_where_the_push_is_lost", "free_dorsiflexion_in_jump"]

  advise "device" { favour = ["rigid", "anterior_shell_ground_reaction"] }
  advise "articulation" { favour = "none" }
}

rule "no_hinge_for_apparent_equinus" {
  when     = "finding.apparent_equinus"
  because  = "The heel is up because knee and hip are too flexed (${limb.gait_midstance_knee}, ${limb.gait_terminal_stance_hip}), not because of the ankle: a spring, a rigid or a ground-reaction device is paired with it, a hinge is not."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns"]

  advise "device" { favour = ["posterior_leaf_spring", "rigid", "anterior_shell_ground_reaction"] }
  advise "articulation" { favour = "none" }
}

rule "ground_reaction_for_crouch" {
  when     = "finding.crouch && !finding.crouch_contracted"
  because  = "Ankle too far forward, knee and hip too flexed, with knee extension of ${limb.knee_extension} and hip extension of ${limb.hip_extension}: the shank has to be kept back, which a shell in front of it does. The more is contracted, the less it gains."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns", "rogozinski_2009", "nice_spasticity"]

  advise "device" { favour = "anterior_shell_ground_reaction" }
}

rule "surgical_opinion_for_contracted_crouch" {
  when     = "finding.crouch_contracted"
  because  = "Crouch with knee extension of ${limb.knee_extension} and hip extension of ${limb.hip_extension}: at 15 deg or more of contracture one study ruled the ground-reaction device out, so a surgical opinion comes first. The limit is from memory, and a later study disagrees."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["rogozinski_2009"]

  advise "device" { favour = "refer_surgical_opinion" }
}

rule "ground_reaction_in_spite_of_contracture" {
  when     = "finding.crouch_contracted && !finding.knee_beyond_reports"
  because  = "Crouch with knee extension of ${limb.knee_extension} and hip extension of ${limb.hip_extension}: in 22 children contracture was no contraindication, and one person with 20 deg at both knees gained 8 deg. An older study disagrees."
  strength = "conditional"
  basis    = "published"
  cites    = ["floor_reaction_response", "contracted_knees_case"]

  advise "device" { favour = "anterior_shell_ground_reaction" }
}

# What the table on foot drop adds where the condition is not cerebral palsy

rule "stiffer_spring_or_stimulation_for_a_spastic_drop" {
  when     = "finding.patterns_from_elsewhere && finding.drop_foot && finding.calf_spastic && !finding.turns_in"
  because  = "A spastic calf (tone ${limb.plantarflexor_tone}) that pulls the foot down in swing without turning it in, on a steady leg: a composite spring that is stiffer than the tone, or stimulation of the nerve. The table is for neurology in general, not for cerebral palsy."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["composite", "functional_stimulation"] }
}

rule "moulded_device_for_inversion" {
  when     = "finding.patterns_from_elsewhere && finding.calf_spastic && finding.turns_in"
  because  = "The calf is spastic (tone ${limb.plantarflexor_tone}) and the foot lands or stands on its outer border, so its contact is unsure: a moulded device holds it in the best position that it reaches and makes up the lost range. The table does not say of what it is made."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["composite", "rigid"] }
}

rule "hold_the_foot_for_standing" {
  when     = "finding.stands_more_than_walks"
  because  = "Gross motor function level ${person.gross_motor_function}: an orthosis is thought of for the position of the foot in sitting, transfers and supported standing. From memory; that it holds the ankle is common practice, no source."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["nice_spasticity"]

  advise "device" { favour = "rigid" }
}

# What goes before

rule "cast_a_young_short_calf" {
  when     = "finding.young_child_to_cast && (finding.true_equinus || finding.jump)"
  because  = "At ${person.age} and ${limb.ankle_dorsiflexion_knee_extended} with the knee straight, serial casts can win range: from 3 to 20 deg in 20 children. With an injection the cast begins three weeks after it; 11.5 % of children had foot ulcers from casts."
  strength = "conditional"
  basis    = "published"
  cites    = ["cottalorda_2000", "lee_2011"]

  advise "device" { favour = "refer_serial_casting" }
}

# Toe walking without a known cause

rule "stiff_plate_before_a_brace" {
  when     = "!finding.spastic && !finding.limb_safety.equinus"
  because  = "Toe walking without a known cause, and the ankle reaches ${limb.ankle_dorsiflexion_knee_extended}: a foot orthosis on a stiff plate is tried first, and a hinged device if that fails within a set time. That plantigrade is range enough is a starting value without a source."
  strength = "conditional"
  basis    = "published"
  cites    = ["herrin_2016"]

  advise "device" { favour = "insole" }
  advise "foot_plate_stiffness" { favour = "rigid" }
}

rule "range_before_a_brace_in_toe_walking" {
  when     = "!finding.spastic && finding.limb_safety.equinus"
  because  = "Toe walking without a known cause, and the ankle stops at ${limb.ankle_dorsiflexion_knee_extended}: casts or surgery gain dorsiflexion. An injection adds nothing to casting, and only surgery was seen to last more than a year."
  strength = "conditional"
  basis    = "published"
  cites    = ["van_kuijk_2014"]

  advise "device" { favour = ["refer_serial_casting", "refer_surgical_opinion"] }
}

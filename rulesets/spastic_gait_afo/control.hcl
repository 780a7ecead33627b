# Whether dorsiflexion may be free, how far the ankle goes in the cast, and what the forces work against.

# Free or held

rule "free_dorsiflexion_in_jump" {
  when     = "finding.jump && finding.dorsiflexion_may_be_free && !finding.push_of_the_calf_lost"
  because  = "${limb.ankle_dorsiflexion_knee_extended} with the knee straight, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}, and the foot stays in line: if there is a hinge, it may leave dorsiflexion free. From memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2014"]

  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "hold_the_ankle" {
  when     = "finding.spastic && !finding.hinge_paired && !finding.dorsiflexion_may_be_free"
  because  = "Free dorsiflexion asks for 10 deg with the knee straight, little tone, a calf that holds the shank and a foot that stays in line; otherwise the motion comes from the midfoot or bends the knee. Here: ${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}, midfoot break ${limb.midfoot_break}. From memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2014"]

  advise "articulation" { favour = "none" }
}

rule "no_free_dorsiflexion_in_crouch" {
  when     = "finding.crouch"
  because  = "In crouch the shank falls forward already (${limb.gait_midstance_ankle}), so nothing that leaves dorsiflexion free. General teaching, from memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["rodda_graham_2001"]

  advise "articulation" {
    never  = ["free", "plantarflexion_stop", "plantarflexion_resist", "dorsiflexion_assist"]
    favour = "none"
  }
}

# The ankle in the cast

rule "cast_where_the_calf_stops" {
  when     = "finding.limb_safety.equinus"
  because  = "With the knee straight the ankle stops at ${limb.ankle_dorsiflexion_knee_extended}. Forced further in the cast, the midfoot would break or the knee bend; so it is cast there and the heel is built up. From memory, and by the geometry."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010", "owen_2014"]

  advise "cast_ankle_angle" { aim = "limb.ankle_dorsiflexion_knee_extended" }
}

# What the forces work against, seen from the side

rule "lift_the_hanging_foot" {
  when     = "finding.drop_foot"
  because  = "Only the hanging foot (${limb.gait_swing_ankle}) has to be worked against. Worked out from the mechanics; common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_foot_drop" }
}

rule "stop_plantarflexion" {
  when     = "finding.spastic && finding.equinus_in_stance && !finding.knee_goes_back"
  because  = "The calf holds the foot down in stance (${limb.gait_midstance_ankle}): a shell behind the calf, the instep and the forefoot hold it up. Worked out from the mechanics; common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system" { favour = "against_equinus" }
  advise "shell_side" { favour = "posterior" }
}

rule "stop_the_knee_going_back" {
  when     = "finding.spastic && finding.knee_goes_back"
  because  = "The knee goes back (${limb.gait_midstance_knee}): resist plantarflexion and tune how the shank leans, with a shell behind it. The types of gait are published, what is advised for them is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "pressure_system" { favour = "against_knee_hyperextension" }
  advise "shell_side" { favour = "posterior" }
}

rule "keep_the_shank_back" {
  when     = "finding.crouch"
  because  = "The shank falls forward (${limb.gait_midstance_ankle}) over a bent knee: a shell in front of it, the heel and the forefoot plate keep it back. Worked out from the mechanics; common practice, no source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "pressure_system" { favour = "against_shank_advance" }
  advise "shell_side" { favour = "anterior" }
}

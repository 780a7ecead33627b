# What is left open, and why.

clinician_decides "device" {
  because  = "The texts that were read name devices for some patterns of walking only, and hardly compare them."
  consider = ["Swing: ${limb.gait_swing_ankle}; midstance: shank ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}, hindfoot ${limb.gait_midstance_hindfoot}", "Goal ${person.main_goal}; worn until now: ${limb.present_device}"]
}

clinician_decides "articulation" {
  because  = "For some patterns only do the texts that were read say whether the ankle moves in the device, and they do not all say the same."
  consider = ["Range ${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, clonus ${limb.clonus_beats} beats", "Knee in midstance: ${limb.gait_midstance_knee}; quadriceps ${limb.quadriceps_power}"]
}

clinician_decides "sole_profile" {
  because = "A sole is named only for a foot that slaps down and for a weak quadriceps. Otherwise it is settled at the fitting, with the device in the shoe."
}

clinician_decides "shell_side" {
  because = "A side is given only for a shank that comes too far forward; the full design is for composite_design."
}

clinician_decides "pressure_system" {
  because = "Only a shank that comes too far forward is worked against here; the full design is for composite_design."
}

clinician_decides "pressure_system_frontal" {
  because  = "Only a foot that turns in, with a heel that corrects by hand, is held from the side here; the full design is for composite_design."
  consider = ["Corrects by hand: ${limb.hindfoot_corrects_by_hand}"]
}

# What is left open, and why.

clinician_decides "device" {
  because  = "The table pairs two or three devices with most patterns and does not rank them; with other ways of walking it pairs none."
  consider = ["Midstance: ankle ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}; hip late in stance ${limb.gait_terminal_stance_hip}", "Range with the knee straight: ${limb.ankle_dorsiflexion_knee_extended}"]
}

clinician_decides "articulation" {
  because  = "In some patterns only do the texts that were read ask for a joint or for a held ankle."
  consider = ["Range ${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}"]
}

clinician_decides "foot_plate_stiffness" {
  because = "Only for toe walking without a known cause does a text that was read say how stiff the plate is."
}

clinician_decides "shell_side" {
  because = "A side is given only where a foot in equinus, a knee that goes back or crouch is worked against; the full design is for composite_design."
}

clinician_decides "pressure_system" {
  because = "Only a hanging foot, a foot in equinus, a knee that goes back and crouch are worked against here, and none of them in toe walking without a known cause; the full design is for composite_design."
}

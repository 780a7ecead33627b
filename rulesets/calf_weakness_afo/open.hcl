# What is left open besides the device and its stiffness, and why.

clinician_decides "articulation" {
  because  = "Teaching asks for no joint or for one with a stop where the calf is of grade 4 or less, or the shank comes forward. Of other calves, and of Duchenne dystrophy while the person walks alone, nothing was read."
  consider = ["Calf ${limb.plantarflexor_power}; shank in midstance ${limb.gait_midstance_ankle}"]
}

clinician_decides "strut_place" {
  because = "The place is known only of the springs that were tried: behind the ankle. For another device no published comparison of places was found."
}

clinician_decides "shell_side" {
  because = "A side is given only for a weak calf that lets the shank come too far forward; the full design is for composite_design."
}

clinician_decides "pressure_system" {
  because = "Only a shank that comes too far forward over a weak calf is worked against here; the full design is for composite_design."
}

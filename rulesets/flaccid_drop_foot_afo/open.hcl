# What is left open besides the device and its stiffness, and why.

clinician_decides "articulation" {
  because  = "Teaching says what a joint does only for weak dorsiflexors with little tone against them, and for a calf that is weak as well."
  consider = ["Dorsiflexors ${limb.dorsiflexor_power}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}"]
}

clinician_decides "heel_raise_place" {
  because = "A place is named only for wedges under a slightly short calf, on a stable ankle with a knee that goes back."
}

clinician_decides "sole_profile" {
  because = "A sole is named only for a foot that lifts in swing and slaps down. Otherwise it is settled at the fitting, with the device in the shoe."
}

clinician_decides "pressure_system" {
  because = "Only weak dorsiflexors with little tone against them are helped from the side here; the full design is for composite_design."
}

clinician_decides "pressure_system_frontal" {
  because  = "Only a foot that drops, on an ankle that is loose to one side, is held from the side here; the full design is for composite_design."
  consider = ["Sideways: ${limb.ankle_sideways_stability}"]
}

# What is left open besides the device, and why.

clinician_decides "articulation" {
  because  = "Only for a drop on a steady ankle, with a calf that lifts the heel, is it said that no joint is needed."
  consider = ["Heel rise ${limb.heel_rise_height}; sideways ${limb.ankle_sideways_stability}"]
}

clinician_decides "hindfoot_in_cast" {
  because  = "The block test decides for a heel in varus. How another heel is taken, no source that was read says."
  consider = ["Heel in standing: ${limb.hindfoot_alignment}; block test: ${limb.block_test}"]
}

clinician_decides "hindfoot_posting" {
  because  = "A side is raised only where a varus comes straight on the block. For another heel nothing that was read says which side."
  consider = ["Block test: ${limb.block_test}"]
}

clinician_decides "forefoot_posting" {
  because  = "A recess is named only where the dropped first ray tips the heel. For another forefoot nothing that was read says what to do."
  consider = ["Block test: ${limb.block_test}"]
}

clinician_decides "shell_side" {
  because = "A side is given only for a very weak calf that lets the shank fall forward; the full design is for composite_design."
}

clinician_decides "foot_shell" {
  because  = "Only weak hands, and a varus that tips on skin that does not feel, ask for a foot shell here. No measurement compares a low with a high one."
  consider = ["Hands: ${person.hand_function}; help ${person.help_available}"]
}

clinician_decides "ankle_strap" {
  because  = "A strap is named only for a varus that gives, on skin that feels it."
  consider = ["Heel in standing: ${limb.hindfoot_alignment}"]
}

clinician_decides "pressure_system" {
  because = "Only a shank that falls forward over a very weak calf is worked against here; the full design is for composite_design."
}

clinician_decides "pressure_system_frontal" {
  because  = "Only a varus that can be corrected, on an ankle that tips, is held from the side here; the full design is for composite_design."
  consider = ["Heel in standing: ${limb.hindfoot_alignment}; block test: ${limb.block_test}"]
}

# What the protocol leaves to the clinician, and why, besides what stands with its own subject.

clinician_decides "device" {
  because  = "The clinic has rules for some patterns only, and ranks few of the devices that suit them."
  consider = ["Swing: ${limb.gait_swing_ankle}; midstance: shank ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}"]
}

clinician_decides "articulation" {
  because  = "A hinge stays possible where the ankle has 10 deg of dorsiflexion and the calf is neither spastic nor weak. Then a held ankle is possible too."
  consider = ["What the person does in a day: activity ${person.activity_demand}"]
}

clinician_decides "cast_block_height" {
  because  = "Nobody stands on a block of more than 60 mm to be cast. Where the ankle stops so far short, another way of casting is found."
  consider = ["The ankle stops at ${quantity.usable_range}", "Casting in lying, and setting the cast up on its heel afterwards"]
}

clinician_decides "cast_loading" {
  because  = "Only a foot that comes flat under load, and not before, has to be cast under it."
  consider = ["Heel in standing: ${limb.heel_contact_standing}"]
}

clinician_decides "shank_to_vertical_target" {
  because  = "Where stance needs nothing from the device, the shank stands as the shoe lets it."
  consider = ["Lean in this shoe with nothing added: ${quantity.lean_in_own_shoe}"]
}

clinician_decides "heel_raise" {
  because  = "By rule only what is missing under the heel is built up, and no more than 60 mm. How much more it takes, tuning at the fitting decides."
  consider = ["The heel stands ${quantity.heel_gap} up; the shoe gives ${quantity.shoe_drop}"]
}

clinician_decides "heel_raise_opposite" {
  because  = "By rule the other side is raised only where this one is built up, or where blocks under it level the pelvis of a leg in equinus."
  consider = ["Blocks under the other foot: ${other.pelvis_levelling_block}"]
}

clinician_decides "foot_plate_length" {
  because  = "Apart from a lever that has to hold the shank back, and a light device for the swing, nothing says how long the plate is."
  consider = ["Room in the shoe, and getting up from a chair"]
}

clinician_decides "foot_plate_stiffness" {
  because  = "Only a shank that falls forward asks for a stiff plate here."
  consider = ["Push-off: ${limb.gait_preswing_push_off}"]
}

clinician_decides "shell_side" {
  because  = "Where no shank falls forward, no calf pulls and no knee goes back, neither side has a task. A shank that falls forward over broken skin waits until that has healed."
  consider = ["Skin over the shin: ${limb.anterior_shin_skin}"]
}

clinician_decides "closure" {
  because  = "No measurement compares a strap with a second shell."
  consider = ["Hands: ${person.hand_function}; help ${person.help_available}"]
}

clinician_decides "proximal_height" {
  because  = "Without a large force no source gives the height."
  consider = ["Fibular head at ${limb.fibular_head_height}: edge and strap stay off it"]
}

clinician_decides "foot_shell" {
  because  = "No measurement compares a low with a high foot shell."
  consider = ["Hands: ${person.hand_function}; help ${person.help_available}"]
}

clinician_decides "ankle_strap" {
  because = "Only a heel that turns in asks for a strap here, and only the skin over the malleoli speaks against one."
}

clinician_decides "pressure_system" {
  because = "The clinic works against some patterns from the side, and puts these in no order where several are there."
}

clinician_decides "pressure_system_frontal" {
  because  = "Only a heel that turns in, and can be brought back in standing, is held from the side here."
  consider = ["Corrects on standing: ${limb.hindfoot_corrects_standing}"]
}

clinician_decides "padding" {
  because  = "On skin that feels and is not at risk no source says how much is lined."
  consider = ["Skin risk: ${person.skin_risk}"]
}

clinician_decides "relief" {
  because  = "Only the malleoli have a rule here."
  consider = ["Other places that bear the shell: heel ${limb.heel_skin}, shin ${limb.anterior_shin_skin}"]
}

# What the safety of a limb leaves open: it keeps away what harms and says what is watched, and a choice on which it has
# nothing to say belongs to the ruleset of the condition, or to the clinician.

clinician_decides "device" {
  because  = "The safety ruleset says only what keeps a device away and who is asked first. It chooses no device, and puts several opinions in no order."
  consider = ["What the device is for: ${person.main_goal}", "What the ruleset of the condition says"]
}

clinician_decides "articulation" {
  because  = "Of the joint the safety ruleset speaks only where clonus lasts or the calf is short, and texts on clonus disagree."
  consider = ["Clonus: ${limb.clonus_beats} beats; range with the knee straight: ${limb.ankle_dorsiflexion_knee_extended}", "What the ruleset of the condition says"]
}

clinician_decides "cast_ankle_angle" {
  because  = "The safety ruleset only keeps the cast within the range of the ankle. Which angle is taken there, the shoe and the ruleset of the condition say."
  consider = ["Range with the knee straight: ${limb.ankle_dorsiflexion_knee_extended}", "The shoe, and what the device has to hold"]
}

clinician_decides "hindfoot_in_cast" {
  because  = "The safety ruleset only takes a hindfoot as it is that no hand corrects. How far another one is corrected in the cast is not a question of safety."
  consider = ["Corrects by hand: ${limb.hindfoot_corrects_by_hand}", "Whether it also corrects under load"]
}

clinician_decides "strut_place" {
  because  = "The safety ruleset only keeps the strut off skin that is marked or open. For the rest no published comparison of places was found."
  consider = ["Skin beside the shank: medial ${limb.medial_shank_skin}, lateral ${limb.lateral_shank_skin}"]
}

clinician_decides "closure" {
  because  = "The safety ruleset only rules out a narrow strap, and asks for one that lets out where the leg swells. What else closes the device is not a question of safety."
  consider = ["Hands: ${person.hand_function}; help ${person.help_available}"]
}

clinician_decides "proximal_height" {
  because  = "The safety ruleset only keeps the upper edge below open skin at the knee."
  consider = ["Fibular head at ${limb.fibular_head_height}: edge and strap stay off it"]
}

clinician_decides "ankle_strap" {
  because  = "The safety ruleset only keeps an instep strap off skin that does not bear it. Whether the heel needs a strap is not a question of safety."
  consider = ["Whether the heel lifts in the foot shell"]
}

clinician_decides "padding" {
  because  = "Beyond skin that can't feel, is fragile or hurts to touch no source says how much is lined."
  consider = ["Lining takes room in the shoe and softens the hold"]
}

clinician_decides "relief" {
  because  = "Only places that are fragile or stay red after pressure are relieved for the sake of the skin. Where there are several, the clinician takes more than one."
  consider = ["An open place is for wound care, not for relief", "Callus: ${limb.plantar_callus}"]
}

clinician_decides "review_interval" {
  because  = "Growth, foot risk, injection, operation and cast set limits; no source says when a device is first looked at again."
  consider = ["Progression: ${person.progression}", "Skin risk: ${person.skin_risk}; help with putting on: ${person.help_available}"]
}

clinician_decides "skin_check" {
  because  = "Only skin at risk has a stated check, and leaflets disagree on how long redness may last. On other skin no source says how often it is looked at."
  consider = ["Whether the person can look at all of the foot and leg: ${person.skin_check_possible}"]
}

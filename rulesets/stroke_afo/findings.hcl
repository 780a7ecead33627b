# Facts about a leg after stroke. Grades and degrees that no source gives are starting values, and say so.

# Tone and length

finding "calf_spastic" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('1+')"
  because = "The foot-drop table asks for low or spastic tone and gives no grade. 1+ is a starting value without a source."
}

finding "clonus" {
  holds   = "limb.clonus_beats >= 3"
  because = "Three beats or more are abnormal."
  cites   = ["degowin_1987"]
}

finding "contracture" {
  holds   = "finding.limb_safety.equinus"
  because = "The trial compared people with and without a moderate contracture; its abstract gives no degrees. Short of plantigrade with the knee straight is a starting value without a source."
}

# Power

finding "quadriceps_weak" {
  holds   = "limb.quadriceps_power < muscle_power('4')"
  because = "The sources say weak and give no grade. Below 4 is a starting value without a source."
}

finding "ankle_very_weak" {
  holds   = "limb.dorsiflexor_power < muscle_power('3') && limb.plantarflexor_power < muscle_power('3')"
  because = "The series says severe weakness up and down. Neither group moves the foot through its range against gravity: a starting value without a source."
}

finding "dorsiflexors_less_weak" {
  holds   = "limb.dorsiflexor_power >= muscle_power('3') && limb.dorsiflexor_power < muscle_power('5')"
  because = "The series says less severe weakness: weak, but lifts the foot against gravity. The grades are starting values without a source."
}

# Walking

finding "foot_drops" {
  holds   = "limb.gait_swing_ankle in ['hangs', 'turns_in', 'turns_out']"
  because = "The foot is not lifted straight in swing: it hangs, or turns to one side."
}

finding "turns_in" {
  holds   = "limb.gait_initial_contact == 'lateral_border' || limb.gait_midstance_hindfoot == 'varus'"
  because = "The foot lands on its outer border, or stands on it."
}

finding "knee_goes_back" {
  holds   = "limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back']"
  because = "The knee goes past straight in stance."
}

finding "knee_unstable" {
  holds   = "limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back', 'gives_way']"
  because = "The knee goes past straight in stance, or gives way."
}

finding "stance_steady" {
  holds   = "limb.gait_midstance_ankle == 'moves_forward_steadily' && limb.gait_midstance_knee == 'near_straight' && !finding.turns_in"
  because = "The shank passes over a foot that stands flat, and the knee is near straight."
}

finding "shank_not_held" {
  holds   = "limb.gait_midstance_ankle == 'too_far_forward' || limb.gait_midstance_knee in ['too_flexed', 'gives_way']"
  because = "The shank comes too far over the foot, or the knee stays bent or gives way: nothing holds them back."
}

finding "lands_badly" {
  holds   = "limb.gait_loading_foot in ['foot_slap', 'toes_first']"
  because = "The foot slaps down, or the toes come down first."
}

finding "walking_trouble" {
  holds   = "finding.foot_drops || finding.lands_badly || !finding.stance_steady"
  because = "The swing of this leg, the way its foot comes down, or its stance is at fault."
}

# Patterns that the sources name

finding "low_tone_drop" {
  holds   = "finding.foot_drops && finding.stance_steady && !finding.calf_spastic && !finding.contracture"
  because = "Foot drop alone: low tone, an ankle that can be moved up, a steady stance."
  cites   = ["foot_drop_table", "foot_drop_wiki"]
}

finding "slap_only" {
  holds   = "limb.gait_loading_foot == 'foot_slap' && limb.gait_swing_ankle == 'lifts' && finding.stance_steady && !finding.calf_spastic"
  because = "The foot clears the ground and stance is steady; it only comes down too fast."
  cites   = ["foot_drop_table"]
}

finding "spastic_but_straight" {
  holds   = "finding.calf_spastic && finding.stance_steady && !finding.contracture && (finding.foot_drops || finding.lands_badly)"
  because = "A spastic calf that shows in swing or as the foot comes down, with little or no shortening, a foot that does not turn in, a steady stance."
  cites   = ["foot_drop_table"]
}

finding "spastic_equinovarus" {
  holds   = "finding.calf_spastic && finding.turns_in"
  because = "A spastic calf, and a foot that lands or stands on its outer border."
}

finding "rigid_is_advised" {
  holds   = "finding.limb_safety.tone_marked || finding.turns_in || finding.knee_unstable"
  because = "The three reasons that older advice gives for a rigid, tuned device, from memory: tone that is moderate to severe (from grade 2 on, a match of ours without a source), inversion, an unstable knee."
}

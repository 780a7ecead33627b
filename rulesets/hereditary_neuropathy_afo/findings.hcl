# Facts about a leg with inherited neuropathy.

# Shape

finding "high_arch" {
  holds   = "limb.fpi_medial_arch <= fpi_item('-1')"
  because = "The algorithm says pes cavus and gives no measure. A medial arch scored on the high side is a starting value without a source."
  cites   = ["scheffers_2012", "redmond_2005"]
}

finding "varus_heel" {
  holds   = "limb.hindfoot_alignment == 'varus'"
  because = "The heel stands in varus."
}

finding "varus_corrects" {
  holds   = "finding.varus_heel && limb.block_test == 'corrects'"
  because = "With the first ray hanging free the heel comes straight: the forefoot drives the varus."
  cites   = ["block_test"]
}

finding "varus_stiff" {
  holds   = "finding.varus_heel && limb.block_test == 'does_not_correct'"
  because = "The heel stays in varus with the first ray hanging free: the hindfoot itself is stiff."
  cites   = ["block_test"]
}

finding "varus_gives" {
  holds   = "finding.varus_heel && limb.block_test in ['corrects', 'corrects_partly'] && finding.ankle_unsteady"
  because = "A varus that can be corrected, on an ankle that tips."
}

# Weakness and control

finding "foot_drops" {
  holds   = "limb.gait_swing_ankle in ['hangs', 'turns_in', 'turns_out']"
  because = "The foot is not lifted straight in swing: it hangs, or turns to one side."
}

finding "calf_very_weak" {
  holds   = "limb.heel_rise_height in ['none', 'part']"
  because = "The foot-drop table says very weak plantarflexors. No full heel rise on this leg is a starting value without a source."
}

finding "ankle_unsteady" {
  holds   = "finding.limb_safety.ankle_loose_sideways || limb.gait_loading_foot == 'rolls_outwards'"
  because = "The ankle tips sideways under the hand or under the body's weight."
}

finding "only_the_drop" {
  holds   = "finding.foot_drops && !finding.calf_very_weak && !finding.ankle_unsteady && !finding.limb_safety.equinus"
  because = "Foot drop alone: a calf that lifts the heel, a steady ankle, and a foot that comes up to plantigrade by hand."
  cites   = ["foot_drop_table"]
}

# Balance and walking

finding "balance_a_little_poor" {
  holds   = "person.standing_balance == 'eyes_open'"
  because = "Stands with the eyes open and not with them closed. The match with mild loss of balance is ours, without a source."
}

finding "walks_with_difficulty" {
  holds   = "person.standing_balance in ['unable', 'with_support'] || limb.gait_swing_clearance in ['toe_catches', 'toe_drags']"
  because = "Does not stand freely, or trips: the algorithm's moderate to severe loss of balance and difficulty in walking. The match is ours, without a source."
  cites   = ["scheffers_2012"]
}

finding "child_needs_orthosis" {
  holds   = "finding.limb_safety.growing && finding.high_arch && finding.walks_with_difficulty && (finding.foot_drops || finding.calf_very_weak || finding.limb_safety.equinus)"
  because = "A child with a high arch, a weak or pointed foot and trouble in walking or standing."
  cites   = ["scheffers_2012"]
}

finding "hands_weak" {
  holds   = "person.hand_function in ['weak_grip', 'none']"
  because = "The neuropathy has reached the hands that fasten the device."
}

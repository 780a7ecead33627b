# Beside those of the ruleset on the safety of a limb, which also watches involuntary movement, recent treatment,
# growth, tone and skin.

# Where published advice disagrees

caution "hinge_or_hold" {
  level = "note"
  when  = "finding.hinge_disputed || finding.drop_foot && !finding.dorsiflexion_may_be_free"
  says  = "Published advice disagrees. A table for cerebral palsy pairs this pattern with a spring or a hinge; by teaching from memory the ankle is held unless dorsiflexion, tone, power and foot allow it (${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}, midfoot break ${limb.midfoot_break}), and a guideline, from memory, holds it where knee or hip are poorly controlled."
  act   = "Decide with these in view, try both if you can, and write down why."
  basis = "published"
  cites = ["sagittal_patterns", "owen_2014", "nice_spasticity"]
}

caution "contracture_limit_disputed" {
  level = "note"
  when  = "finding.crouch_contracted && !finding.knee_beyond_reports"
  says  = "Published advice disagrees at knee extension ${limb.knee_extension}, hip extension ${limb.hip_extension}. One study (n = 27) ruled a ground-reaction device out from 15 deg of contracture, as remembered; another (n = 22) found contracture no contraindication, and one person with 20 deg at both knees gained."
  act   = "Ask the surgeon and the family what comes first. If a device is tried, measure knee extension in walking with and without it."
  basis = "published"
  cites = ["rogozinski_2009", "floor_reaction_response", "contracted_knees_case"]
}

caution "range_decides_alone" {
  level = "note"
  when  = "person.diagnosis_group == 'cerebral_palsy' && person.gross_motor_function <= gross_motor_function('II') && finding.range_to_be_gained"
  says  = "Level ${person.gross_motor_function} with dorsiflexion of ${limb.ankle_dorsiflexion_knee_extended}. Advice disagrees on acting on range alone: surveillance programmes do by cut-offs, and casts can win range in young children; in 60 children of level I and II the cut-offs were not evidence based and did not follow function."
  act   = "Don't treat the angle alone: look for what it does in walking."
  basis = "published"
  cites = ["range_cut_offs", "cottalorda_2000"]
}

caution "foot_turned_out" {
  level = "precaution"
  when  = "limb.gait_foot_progression == 'out_toeing_marked'"
  says  = "The foot points outwards in walking; thigh-foot angle ${limb.thigh_foot_angle}. A turned shank shortens the lever by which the forefoot straightens the knee (no limit was read), though in 22 children a foot turned out went with a better response to a ground-reaction device."
  act   = "Measure the thigh-foot angle, look for a midfoot break, and think of a surgical opinion on the torsion."
  basis = "published"
  cites = ["rogozinski_2009", "floor_reaction_response"]
}

caution "device_or_stimulation" {
  level = "note"
  when  = "finding.patterns_from_elsewhere && finding.drop_foot && finding.calf_spastic && !finding.turns_in"
  says  = "Orthosis and stimulation came out equal in five trials with 815 people after stroke. One man with multiple sclerosis reached 0.45 m/s at a fast pace with an orthosis and 0.35 m/s with stimulation."
  act   = "Let the person try both where both can be had, and time the same walk in each."
  basis = "published"
  cites = ["prenton_2016", "sclerosis_case_2018"]
}

# Where the ground-reaction device has its limits

caution "contracture_beyond_reports" {
  level = "contraindication"
  when  = "finding.crouch && finding.knee_beyond_reports"
  says  = "Crouch with knee extension of ${limb.knee_extension}: nothing that was read reports a ground-reaction device on a knee contracted by more than 20 deg."
  act   = "Surgical opinion before the cast."
  basis = "common_practice"
  cites = ["contracted_knees_case", "rogozinski_2009"]
}

caution "hip_turned_in" {
  level = "precaution"
  when  = "(finding.crouch || finding.apparent_equinus || finding.jump) && limb.gait_midstance_hip_rotation == 'internal'"
  says  = "Knee-flexion gait, and the hip turns in as the other leg passes. A trial of stiff devices left out hips turned in by more than 20 deg in midstance, so its findings may not cover this leg."
  act   = "Have the turning measured; 20 deg can't be told by eye, so any hip seen to turn in counts here. Say so, set a short trial and measure the result."
  basis = "published"
  cites = ["kerkum_2013"]
}

caution "stiffness_by_trial" {
  level = "note"
  when  = "(finding.crouch || finding.apparent_equinus || finding.jump) && person.diagnosis_group == 'cerebral_palsy'"
  says  = "Knee-flexion gait: in a trial protocol (6 to 14 years, level I to III) three stiffnesses of a ground-reaction device were tried and the one with most knee extension in single stance was kept, measured after 12 to 20 weeks."
  act   = "If a ground-reaction device is made, plan to try more than one stiffness and to measure."
  basis = "published"
  cites = ["kerkum_protocol"]
}

# What to leave alone, or to treat

caution "leave_the_calf_strong" {
  level = "precaution"
  when  = "finding.apparent_equinus"
  says  = "The heel is up, but the ankle is not at fault: an injection into the calf, or lengthening it, may tip this leg into crouch."
  act   = "Look at hamstrings, hip flexors and knee extension; tell whoever plans the injections."
  basis = "published"
  cites = ["sagittal_patterns"]
}

caution "crouch_may_be_past_injections" {
  level = "note"
  when  = "finding.crouch"
  says  = "In crouch that is of long standing, injections alone are not likely to help."
  act   = "In an older child or adult ask for an opinion on multilevel surgery; the source gives no age."
  basis = "published"
  cites = ["sagittal_patterns"]
}

# The foot

caution "midfoot_hides_equinus" {
  level = "precaution"
  when  = "limb.midfoot_break in ['slight', 'marked'] || limb.gait_midstance_ankle == 'midfoot_gives'"
  says  = "The foot bends in the middle (break ${limb.midfoot_break}, midstance ${limb.gait_midstance_ankle}), which looks like dorsiflexion and hides an equinus."
  act   = "Measure dorsiflexion again with the knee straight and the foot held in slight supination, and cast it so."
  basis = "published"
  cites = ["dorsiflexion_in_supination"]
}

caution "heel_out_of_line" {
  level = "precaution"
  when  = "limb.hindfoot_alignment in ['varus', 'valgus']"
  says  = "The hindfoot stands in ${limb.hindfoot_alignment}. In four children a subtalar joint that was not held in neutral made them compensate, and function can be lost."
  act   = "Hold the heel in line in the cast as far as it corrects by hand (${limb.hindfoot_corrects_by_hand}), and no further."
  basis = "published"
  cites = ["carmick_2012"]
}

# The label and the pattern

caution "label_disagrees" {
  level = "precaution"
  when  = <<-EOT
    limb.gait_pattern == 'drop_foot' && !finding.drop_foot
    || limb.gait_pattern == 'drop_foot_with_tight_calf' && !(finding.true_equinus && finding.foot_hangs_in_swing)
    || limb.gait_pattern == 'true_equinus' && !finding.true_equinus
    || limb.gait_pattern == 'jump' && !finding.jump
    || limb.gait_pattern == 'apparent_equinus' && !finding.apparent_equinus
    || limb.gait_pattern == 'crouch' && !finding.crouch
    || limb.gait_pattern == 'stiff_knee' && limb.gait_swing_knee != 'stiff'
    || limb.gait_pattern == 'recurvatum' && !finding.knee_goes_back
  EOT
  says  = "The recorded label is ${limb.gait_pattern}, and that is not what was seen: ankle ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}, hip ${limb.gait_terminal_stance_hip}, swing ${limb.gait_swing_ankle}. By eye the ankle is off by up to 15 deg, enough to take jump for apparent equinus."
  act   = "Look again, on slow video and at the ankle against the shank, not against the floor. What was seen decides here, not the label."
  basis = "published"
  cites = ["video_angles", "sagittal_patterns"]
}

caution "label_is_not_enough" {
  level = "note"
  when  = "limb.gait_pattern != 'no_label'"
  says  = "The label ${limb.gait_pattern} decides nothing here. Labels are from the side only, and weak in validity and reliability when used to choose an orthosis."
  act   = "Record range, tone, power, and the foot from behind and above. Patterns change with age: date the label and look again."
  basis = "published"
  cites = ["pattern_limits", "rodda_2004"]
}

caution "no_published_pattern" {
  level = "note"
  when  = "finding.no_pattern"
  says  = "Ankle ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}, hip ${limb.gait_terminal_stance_hip}, swing ${limb.gait_swing_ankle}: none of the published patterns."
  act   = "Leave the label out and reason from each phase of the step."
  basis = "common_practice"
}

caution "legs_differ" {
  level = "note"
  when  = "person.distribution in ['both_legs', 'all_four_limbs'] && (limb.gait_midstance_ankle != other.gait_midstance_ankle || limb.gait_midstance_knee != other.gait_midstance_knee)"
  says  = "Asymmetric. This leg: ankle ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}. The other: ${other.gait_midstance_ankle}, ${other.gait_midstance_knee}."
  act   = "Each leg is judged by its own pattern. Look at both together for leg length and balance."
  basis = "published"
  cites = ["pattern_teaching", "rodda_2004"]
}

caution "patterns_from_cerebral_palsy" {
  level = "note"
  when  = "finding.patterns_from_elsewhere"
  says  = "The patterns and their devices are published for cerebral palsy, not for this diagnosis (${person.diagnosis_group})."
  act   = "Take them as a way of looking at the leg, and weigh the course of the condition."
  basis = "published"
  cites = ["sagittal_patterns", "rodda_2004"]
}

# Purpose

caution "goal_and_talk" {
  level = "note"
  when  = "finding.spastic && person.age < years(19)"
  says  = "A child or young person with spasticity, ${person.age}: the guideline asks for a goal of this child's own, and for a talk before the device."
  act   = "Write down the goal (posture, walking, contracture, hip, pain, skin). Talk about looks, discomfort, pressure sores and wasting; ask about self-care, hygiene and whether it will be worn; say how, when and how long it is worn."
  basis = "published"
  cites = ["nice_spasticity_table"]
}

caution "stretch_needs_hours" {
  level = "note"
  when  = "person.main_goal == 'keep_range'"
  says  = "The goal is to keep range. Worn for stretch, a device needs long hours, such as 6 a day (from memory); that it prevents deformity in the long run is unproven. A device for walking is worn for walking."
  act   = "Agree the hours, and when to measure the range again. Below 5 deg with the knee straight a trial gains range first, and then splints at night."
  basis = "published"
  cites = ["ispo_cerebral_palsy", "nice_spasticity", "maas_2012"]
}

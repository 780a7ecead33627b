package cases

// classes writes published cut-offs as findings of the language. The sources are those of the rows
// of testdata/reference/clinical_check_cases.csv that each is held against below.
const classes = `ruleset "classes" {
  title      = "Published cut-offs"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "lower_limb@1"
}
finding "household"         { holds = "person.walking_speed < m_per_s(0.4)" }
finding "limited_community" { holds = "person.walking_speed >= m_per_s(0.4) && person.walking_speed <= m_per_s(0.8)" }
finding "community"         { holds = "person.walking_speed > m_per_s(0.8)" }
finding "home_2017"         { holds = "person.walking_speed < m_per_s(0.49)" }

finding "pad_below_090"   { holds = "limb.ankle_brachial_pressure_index < ratio(0.9)" }
finding "abpi_borderline" { holds = "limb.ankle_brachial_pressure_index >= ratio(0.91) && limb.ankle_brachial_pressure_index <= ratio(0.99)" }
finding "abpi_normal"     { holds = "limb.ankle_brachial_pressure_index >= ratio(1) && limb.ankle_brachial_pressure_index <= ratio(1.4)" }
finding "abpi_severe"     { holds = "limb.ankle_brachial_pressure_index > ratio(0.3) && limb.ankle_brachial_pressure_index <= ratio(0.5)" }
finding "abpi_critical"   { holds = "limb.ankle_brachial_pressure_index <= ratio(0.3) || limb.ankle_systolic_pressure < mmHg(50)" }
finding "abpi_above"      { holds = "limb.ankle_brachial_pressure_index > ratio(1.4)" }

finding "lops"      { holds = "limb.protective_sensation == 'absent'" }
finding "pad"       { holds = "person.arterial_disease == 'confirmed'" }
finding "deformity" { holds = "limb.lesser_toe_position != 'straight'" }
finding "graver"    { holds = "limb.previous_foot_ulcer || limb.foot_amputation != 'none' || person.kidney_failure" }
finding "iwgdf_0"   { holds = "!finding.lops && !finding.pad && !finding.graver" }
finding "iwgdf_1"   { holds = "(finding.lops != finding.pad) && !finding.deformity && !finding.graver" }
finding "iwgdf_2"   { holds = "!finding.graver && (finding.lops && finding.pad || (finding.lops || finding.pad) && finding.deformity)" }
finding "iwgdf_3"   { holds = "(finding.lops || finding.pad) && finding.graver" }

finding "fpi_sides_normal" { holds = "limb.fpi6_total - other.fpi6_total >= -2 && limb.fpi6_total - other.fpi6_total <= 2" }
finding "fpi_sides_severe" { holds = "abs(limb.fpi6_total - other.fpi6_total) > 4" }

finding "gastrocnemius_5" {
  holds = "limb.ankle_dorsiflexion_knee_extended <= deg(5) && limb.ankle_dorsiflexion_knee_flexed > deg(10)"
}
finding "dorsiflexion_sides_normal" {
  holds = "abs(limb.ankle_dorsiflexion_knee_extended - other.ankle_dorsiflexion_knee_extended) < deg(6)"
}
finding "popliteal_abnormal" { holds = "limb.popliteal_angle > deg(50)" }
finding "power_4_or_more"    { holds = "limb.quadriceps_power >= muscle_power('4')" }
finding "power_below_3"      { holds = "limb.quadriceps_power < muscle_power('3')" }

finding "gait_speed_change_reached" { holds = "m_per_s(0.56) - m_per_s(0.4) >= m_per_s(0.16)" }
finding "risk_12_s"    { holds = "person.timed_up_and_go >= s(12)" }
finding "risk_13_5_s"  { holds = "person.timed_up_and_go >= s(13.5)" }
finding "hand_held"    { holds = "person.walking_aid in ['one_stick', 'two_sticks', 'crutches', 'frame', 'rollator']" }

finding "clonus_abnormal"     { holds = "limb.clonus_beats >= 3" }
finding "clonus_sustained_5"  { holds = "limb.clonus_beats >= 5" }
finding "clonus_sustained_10" { holds = "limb.clonus_beats >= 10" }
finding "full_by_20"          { holds = "limb.heel_rises >= 20" }
finding "full_by_25"          { holds = "limb.heel_rises >= 25" }

finding "lunge_gain" {
  holds = "limb.ankle_dorsiflexion_lunge - limb.ankle_dorsiflexion_loaded_knee_extended > deg(6) + 2 * deg(3.5)"
}
finding "tight_girl_6_to_14" {
  holds = "person.sex == 'female' && person.age >= years(6) && person.age < years(15) && limb.popliteal_angle > deg(45)"
}
finding "tight_man_18_to_24" {
  holds = "person.sex == 'male' && person.age >= years(18) && person.age < years(25) && limb.popliteal_angle > deg(32.2)"
}
finding "tight_woman_18_to_24" {
  holds = "person.sex == 'female' && person.age >= years(18) && person.age < years(25) && limb.popliteal_angle > deg(19.2)"
}
finding "borderline_5_to_13" {
  holds = "person.age >= years(5) && person.age < years(14) && limb.ankle_dorsiflexion_knee_extended < deg(10)"
}
finding "borderline_14_to_19" {
  holds = "person.age >= years(14) && person.age < years(20) && limb.ankle_dorsiflexion_knee_extended < deg(5)"
}
finding "z_unusual" {
  holds = "abs(ankle_dorsiflexion_z(limb.ankle_dorsiflexion_knee_extended, person.age, person.sex)) > ratio(2)"
}

finding "child_normal"         { holds = "limb.fpi6_total >= 0 && limb.fpi6_total <= 6" }
finding "child_pronated"       { holds = "limb.fpi6_total >= 6" }
finding "above_85th_6_to_11"   { holds = "person.age >= years(6) && person.age < years(12) && limb.fpi6_total > 6" }
finding "hindfoot_flexible"    { holds = "limb.block_test == 'corrects'" }
finding "hindfoot_rigid"       { holds = "limb.block_test == 'does_not_correct'" }
finding "heel_angle_typical"   { holds = "abs(limb.calcaneal_angle - deg(6.07)) <= 2 * deg(2.7)" }
finding "arch_index_is_a_quarter" { holds = "mm2(2500) / (mm2(4000) + mm2(2500) + mm2(3500)) == ratio(0.25)" }
finding "legs_differ"          { holds = "abs(limb.leg_length - other.leg_length) > mm(20)" }

finding "in_equinus" { holds = "limb.gait_midstance_ankle in ['held_back', 'early_heel_rise']" }
finding "drop"       { holds = "limb.gait_swing_ankle == 'hangs'" }
finding "stiff_knee" { holds = "limb.gait_swing_knee == 'stiff'" }
finding "stiff_hip"  { holds = "limb.gait_terminal_stance_hip == 'does_not_extend'" }
finding "group_1"    { holds = "finding.drop && !finding.in_equinus" }
finding "group_2"    { holds = "finding.drop && finding.in_equinus && !finding.stiff_knee" }
finding "group_3"    { holds = "finding.drop && finding.in_equinus && finding.stiff_knee && !finding.stiff_hip" }
finding "group_4"    { holds = "finding.drop && finding.in_equinus && finding.stiff_knee && finding.stiff_hip" }
finding "bent"       { holds = "limb.gait_midstance_knee == 'too_flexed' && finding.stiff_hip" }
finding "pattern_jump"             { holds = "finding.bent && finding.in_equinus" }
finding "pattern_apparent_equinus" { holds = "finding.bent && limb.gait_midstance_ankle == 'moves_forward_steadily'" }
finding "pattern_crouch"           { holds = "finding.bent && limb.gait_midstance_ankle == 'too_far_forward'" }

quantity "screened_from" {
  unit  = "mo"
  value = "limb.foot_risk == iwgdf_risk('0') ? months(12) : limb.foot_risk == iwgdf_risk('1') ? months(6) : limb.foot_risk == iwgdf_risk('2') ? months(3) : months(1)"
}
quantity "screened_to" {
  unit  = "mo"
  value = "limb.foot_risk <= iwgdf_risk('1') ? months(12) : limb.foot_risk == iwgdf_risk('2') ? months(6) : months(3)"
}
`

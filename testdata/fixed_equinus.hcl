# An invented person: fixed equinus after an old injury of the lower leg. The same fields as in JSON, with comments.

format     = "crus-assessment/1"
id         = "demo-fixed-equinus"
vocabulary = "lower_limb@1"
date       = "2026-11-10"
assessor   = "orthotist, demonstration"
device_for = ["right"]

person {
  age                   = 57
  sex                   = "female"
  height                = "162 cm"
  body_mass             = { value = 143, unit = "[lb_av]" }
  diagnosis_group       = "trauma_or_surgery"
  diagnosis_text        = "Invented person. Compartment syndrome of the right leg thirty years ago; ankle and hindfoot stiff since."
  progression           = "stable"
  onset                 = "1996-05-01"
  involuntary_movement  = "none"
  medicine_for_tone     = "none"
  last_surgery          = "1996-09-12"
  goals                 = "Stand through a day in the kitchen of a school; less pain under the forefoot."
  activity_demand       = "moderate"
  walking_terrain       = "level_outdoors"
  driving               = "manual"
  functional_ambulation = "5"
  community_walking     = "community"
  walking_speed         = 0.94
  timed_up_and_go       = { not_recorded = "no time left in the appointment" }
  walking_aid           = "none"
  falls_last_year       = 0
  standing_balance      = "eyes_closed"
  hand_function         = "both_hands"
  help_available        = "sometimes"
  skin_check_possible   = true
  follows_instructions  = "alone"
  diabetes              = "none"
  arterial_disease      = "none_known"
  venous_disease        = "varicose"
  skin_risk             = "raised"
}

right {
  present_device                          = "footwear"
  quadriceps_power                        = "5"
  hip_extensor_power                      = "5"
  dorsiflexor_power                       = "3"
  plantarflexor_power                     = "4"
  heel_rises                              = { not_recorded = "stands on the forefoot already" }
  ankle_selective_control                 = "isolated"
  hip_extension                           = 10
  knee_extension                          = 4
  popliteal_angle                         = 25
  ankle_dorsiflexion_knee_extended        = -16 # the same with the knee bent: not the gastrocnemius alone
  ankle_dorsiflexion_knee_flexed          = -15
  ankle_plantarflexion                    = 31
  ankle_dorsiflexion_loaded_knee_extended = -15
  ankle_end_feel                          = "hard"
  ankle_sideways_stability                = "stable"
  hindfoot_inversion                      = 6
  hindfoot_eversion                       = 2
  midfoot_mobility                        = "stiff"
  midfoot_break                           = "none"
  first_ray_position                      = "plantarflexed"
  first_ray_corrects                      = "not_at_all"
  great_toe_position                      = "clawed"
  lesser_toe_position                     = "clawed_fixed"
  plantarflexor_tone                      = "0"
  soleus_tone                             = "0"
  gastrocnemius_fast_angle                = { not_recorded = "no catch felt" }
  clonus_beats                            = 0
  clonus_sustained                        = false
  protective_sensation                    = "present"
  ankle_proprioception                    = "intact"
  malleolar_skin                          = "intact"
  heel_skin                               = "intact"
  achilles_skin                           = "fragile"
  first_metatarsal_head_skin              = "red_after_pressure"
  plantar_forefoot_skin                   = "red_after_pressure"
  foot_dorsum_skin                        = "intact"
  anterior_shin_skin                      = "fragile"
  posterior_calf_skin                     = "intact"
  plantar_callus                          = "first_metatarsal_head"
  hot_swollen_foot                        = false
  fluctuating_oedema                      = false
  foot_pulses                             = "one"
  ankle_brachial_pressure_index           = 1.04
  foot_ankle_pain                         = 5
  heel_contact_standing                   = "none"
  hindfoot_alignment                      = "neutral"
  hindfoot_corrects_standing              = "none_needed"
  knee_position_standing                  = "hyperextended"
  pelvis_level_standing                   = "high"
  pelvis_levelling_block                  = 0
  shank_to_vertical_barefoot              = -4
  gait_seen_in                            = "shoe"
  gait_initial_contact                    = "forefoot"
  gait_loading_foot                       = "toes_first"
  gait_loading_knee                       = "stays_straight"
  gait_midstance_ankle                    = "held_back"
  gait_midstance_knee                     = "hyperextends_slowly"
  gait_midstance_hindfoot                 = "neutral"
  gait_terminal_stance_heel               = "early"
  gait_terminal_stance_hip                = "extends"
  gait_swing_ankle                        = "hangs"
  gait_swing_clearance                    = "with_compensation"
  gait_swing_compensation                 = "hip_hitch"
  foot_length                             = "23.8 cm"
  heel_to_ball_length                     = "16.5 cm"
  medial_malleolus_height                 = 71
  lateral_malleolus_height                = 60
  fibular_head_height                     = 392
  malleolar_width                         = 66
  ankle_girth                             = 221
  calf_girth                              = "30.2 cm" # thin: the muscle was lost
  shoe_will_be_worn                       = true
  shoe_heel_height                        = 32
  shoe_forefoot_height                    = 14
  shoe_heel_varies                        = true
  shoe_fastening                          = "laces"
  shoe_upper_height                       = "ankle"
  shoe_depth                              = "standard"
}

left {
  dorsiflexor_power                = "5"
  plantarflexor_power              = "5"
  heel_rises                       = 19
  ankle_dorsiflexion_knee_extended = 7
  ankle_dorsiflexion_knee_flexed   = 16
  plantarflexor_tone               = "0"
  protective_sensation             = "present"
  pelvis_levelling_block           = "18 mm"
}

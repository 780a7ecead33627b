# What can be advised of the device. Families are named by what they do. Each feature is decided for each limb
# unless it says otherwise; alignment, stiffness and force pattern are settled together, before the cast is taken.

# Device, or where to refer first

choice "device" {
  label    = "Device or referral"
  concerns = "device"
  options = [
    "no_device", "shoe_adaptation", "insole", "elastic_lifter", "functional_stimulation",
    "supra_malleolar", "posterior_leaf_spring", "composite", "articulated", "rigid",
    "anterior_shell_ground_reaction", "knee_ankle_foot", "refer_tone_management",
    "refer_serial_casting", "refer_surgical_opinion", "refer_vascular_opinion",
    "refer_wound_care", "refer_foot_protection",
  ]
  ordered = false
  cites   = ["foot_drop_table"]
  how     = "The family of device, or the opinion that comes before any device."
}

choice "articulation" {
  label    = "Ankle articulation"
  concerns = "device"
  options = [
    "none", "free", "plantarflexion_stop", "plantarflexion_resist", "dorsiflexion_assist",
    "dorsiflexion_stop", "both_stops",
  ]
  ordered = false
  how     = "Whether the ankle moves in the device, and what stops, resists or assists it."
}

# Alignment

choice "cast_ankle_angle" {
  label    = "Ankle angle in the cast"
  concerns = "alignment"
  unit     = "deg"
  between  = [-60, 20]
  rounding = 1
  cites    = ["device_angle_error"]
  how      = "Foot to shank in the cast; dorsiflexion positive; never a position that the ankle cannot get into."
}

choice "cast_block_height" {
  label    = "Block under the heel in the cast"
  concerns = "alignment"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
  how      = "Height of the block under the heel while casting: the shoe's heel-sole differential, or more where the heel cannot come down."
}

choice "cast_loading" {
  label    = "Load on the foot while casting"
  concerns = "alignment"
  options  = ["unloaded", "partly_loaded", "loaded"]
  ordered  = true
  how      = "How much weight is on the foot in the cast."
}

choice "hindfoot_in_cast" {
  label    = "Hindfoot in the cast"
  concerns = "alignment"
  options  = ["accommodated", "partly_corrected", "corrected"]
  ordered  = true
  how      = "Whether the hindfoot is brought straight or taken as it is."
}

choice "hindfoot_posting" {
  label    = "Hindfoot posting"
  concerns = "alignment"
  options  = ["none", "medial", "lateral"]
  ordered  = false
  how      = "Wedge under the heel, at the side that is raised."
}

choice "forefoot_posting" {
  label    = "Forefoot posting"
  concerns = "alignment"
  options  = ["none", "medial", "lateral", "first_ray_recess"]
  ordered  = false
  how      = "Wedge under the forefoot at the side that is raised, or a recess that lets the first ray drop."
}

choice "shank_to_vertical_target" {
  label    = "Shank to vertical in shoe and device, target"
  concerns = "alignment"
  unit     = "deg"
  between  = [-10, 25]
  rounding = 1
  cites    = ["eddison_2017", "owen_2010"]
  how      = "Lean of the shank, standing in the shoe; forward positive. Tuned on the person."
}

choice "heel_raise" {
  label    = "Heel raise on this side"
  concerns = "alignment"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
  how      = "Added under the heel beyond the height of the shoe, in all."
}

choice "heel_raise_place" {
  label    = "Place of the heel raise"
  concerns = "alignment"
  options  = ["none", "in_foot_shell", "inside_shoe", "under_sole"]
  ordered  = false
  how      = "Where the raise goes."
}

choice "heel_raise_opposite" {
  label    = "Raise on the opposite side"
  concerns = "alignment"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
  cites    = ["leg_length_blocks"]
  how      = "Added under the opposite shoe so that the pelvis is level or this foot clears the ground."
}

choice "heel_raise_opposite_place" {
  label    = "How the opposite side is raised"
  concerns = "alignment"
  options  = ["none", "heel_inside_shoe", "heel_under_sole", "whole_sole"]
  ordered  = false
  how      = "Where the raise on the opposite side goes."
}

# Stiffness

choice "strut_stiffness" {
  label    = "Stiffness about the ankle"
  concerns = "stiffness"
  unit     = "N.m/deg"
  between  = [0, 20]
  rounding = 0.1
  cites    = ["totah_2019"]
  how      = "Moment for each degree of dorsiflexion, device alone. A figure without its way of testing is uncertain by a quarter or more."
}

choice "strut_place" {
  label    = "Place of the strut"
  concerns = "stiffness"
  options  = ["posterior", "medial", "lateral", "medial_and_lateral", "anterior"]
  ordered  = false
  how      = "The side of the ankle at which the strut joins foot shell and shank shell."
}

choice "foot_plate_length" {
  label    = "Foot plate length"
  concerns = "stiffness"
  options  = ["behind_metatarsal_heads", "to_toe_bases", "full_length"]
  ordered  = true
  how      = "Where the stiff part of the foot plate ends."
}

choice "foot_plate_stiffness" {
  label    = "Foot plate stiffness"
  concerns = "stiffness"
  options  = ["flexible", "firm", "rigid"]
  ordered  = true
  how      = "How the foot plate bends at the ball."
}

choice "sole_profile" {
  label    = "Profile of the sole"
  concerns = "stiffness"
  options  = ["as_sold", "cushioned_heel", "bevelled_heel", "flared_heel", "rocker", "stiffened"]
  ordered  = false
  how      = "What the shoe's sole does to the path of the load."
}

# Force pattern

choice "shell_side" {
  label    = "Side of the shank shell"
  concerns = "force_pattern"
  options  = ["anterior", "posterior", "circumferential"]
  ordered  = false
  how      = "Anterior stops the shank coming forward, posterior stops it going back; circumferential does both."
}

choice "closure" {
  label    = "Closure"
  concerns = "force_pattern"
  options  = ["strap", "wide_padded_strap", "anterior_shell", "posterior_shell"]
  ordered  = false
  how      = "What closes the device round the shank; a shell spreads load that a strap concentrates."
}

choice "proximal_height" {
  label    = "Upper edge of the shank shell"
  concerns = "force_pattern"
  options  = ["lower_third", "mid_calf", "below_fibular_head", "tibial_tubercle", "patellar_tendon"]
  ordered  = true
  how      = "A higher edge lengthens the lever and lowers the force."
}

choice "shell_trimline" {
  label    = "Malleolar trim-line"
  concerns = "force_pattern"
  options  = ["behind_malleoli", "through_malleoli", "in_front_of_malleoli"]
  ordered  = true
  default  = "through_malleoli"
  how      = "Where the edge of the shell passes the malleoli; further forward is stiffer."
}

choice "foot_shell" {
  label    = "Foot shell"
  concerns = "force_pattern"
  options  = ["plate_only", "low", "high_medial", "high_lateral", "dorsal"]
  ordered  = false
  how      = "How far the foot is wrapped: a low shell is easy to put on, a dorsal wrap holds foot and midfoot down and back."
}

choice "ankle_strap" {
  label    = "Strap at the ankle"
  concerns = "force_pattern"
  options  = ["none", "instep", "pull_from_lateral", "pull_from_medial"]
  ordered  = false
  how      = "A strap that holds the heel back, or pulls the ankle against varus (from the lateral side) or valgus (from the medial side)."
}

choice "pressure_system" {
  label    = "Three-point pressure system, from the side"
  concerns = "force_pattern"
  options = [
    "none", "against_foot_drop", "against_equinus", "against_knee_hyperextension",
    "against_shank_advance",
  ]
  ordered = false
  how     = "What the three forces work against, seen from the side."
}

choice "pressure_system_frontal" {
  label    = "Three-point pressure system, from behind"
  concerns = "force_pattern"
  options  = ["none", "against_varus", "against_valgus"]
  ordered  = false
  how      = "What the three forces work against, seen from behind."
}

choice "pressure_system_transverse" {
  label    = "Three-point pressure system, from above"
  concerns = "force_pattern"
  options  = ["none", "against_forefoot_adduction", "against_forefoot_abduction"]
  ordered  = false
  how      = "What the three forces work against, seen from above."
}

choice "padding" {
  label    = "Padding"
  concerns = "force_pattern"
  options  = ["none", "at_bony_places", "whole_shell"]
  ordered  = true
  how      = "How much of the shell is lined."
}

choice "relief" {
  label    = "Main place of relief"
  concerns = "force_pattern"
  options = [
    "none", "malleoli", "navicular", "first_metatarsal_head", "fifth_metatarsal_base",
    "fifth_metatarsal_head", "heel", "instep", "tibial_crest", "fibular_head", "more_than_one",
  ]
  ordered = false
  how     = "The bony or tender place that the shell must not touch."
}

# Follow-up

choice "review_interval" {
  of       = "person"
  label    = "Review after"
  concerns = "follow_up"
  unit     = "wk"
  between  = [1, 52]
  rounding = 1
  how      = "Time from delivery to the next review."
}

choice "wearing_in" {
  of       = "person"
  label    = "Wearing in"
  concerns = "follow_up"
  options  = ["usual", "slow", "supervised"]
  ordered  = true
  cites    = ["wear_leaflet"]
  how      = "How fast wear time is built up."
}

choice "skin_check" {
  of       = "person"
  label    = "Skin check"
  concerns = "follow_up"
  options  = ["weekly", "daily", "every_removal"]
  ordered  = true
  cites    = ["wear_leaflet"]
  how      = "How often the skin under the device is looked at."
}

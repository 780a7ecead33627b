# Quantities: the angles, heights, moments and forces of the design, and what the workshop's drawing shows. Dorsiflexion
# and a forward lean are positive. Worked out from what is measured; how sure each is stands with the cautions.

# Angles and heights

quantity "usable_range" {
  unit    = "deg"
  value   = "limb.heel_contact_standing == 'only_under_load' ? limb.ankle_dorsiflexion_loaded_knee_extended : limb.ankle_dorsiflexion_knee_extended"
  because = "The dorsiflexion that a device can count on, knee extended. Where the foot only comes flat under body weight, what is found standing counts. Common practice, no source."
}

quantity "cast_angle" {
  unit    = "deg"
  value   = "feasible_ankle_angle(deg(0), quantity.usable_range)"
  because = "Plantigrade, or where the ankle stops short of it."
}

quantity "shoe_drop" {
  unit    = "mm"
  value   = "limb.shoe_heel_height - limb.shoe_forefoot_height"
  because = "Heel-sole differential of the shoe that will be worn."
}

quantity "block_for_the_ankle" {
  unit    = "mm"
  value   = "block_for_equinus(quantity.cast_angle, limb.heel_to_ball_length)"
  because = "How high the heel stands with the shank upright and the ball on the ground."
}

quantity "starting_lean" {
  unit    = "deg"
  value   = "deg(11)"
  because = "Where tuning of the lean starts. From memory; healthy shanks pass it at 25 to 29 % of the gait cycle at natural speed."
  cites   = ["owen_2010", "bovi_2011"]
}

quantity "speed_in_heights" {
  unit    = "1"
  value   = "person.walking_speed * s(1) / person.height"
  because = "Body heights walked in a second."
  cites   = ["bovi_2011"]
}

quantity "lean_at_own_speed" {
  unit    = "deg"
  value   = <<-EOT
    person.age < years(18)
    ? (finding.walks_very_slowly ? deg(10.48) : finding.walks_slowly ? deg(12.23) : deg(13.14))
    : (finding.walks_very_slowly ? deg(10.69) : finding.walks_slowly ? deg(12.05) : deg(12.56))
  EOT
  because = "Lean of a healthy shank at 30 % of the gait cycle, by age and by speed in body heights: below 0.6, below 0.8, natural."
  cites   = ["bovi_2011"]
}

quantity "heel_short_by" {
  unit    = "mm"
  value   = <<-EOT
    finding.ankle_is_held
    ? heel_differential_for(quantity.starting_lean, quantity.cast_angle, limb.heel_to_ball_length) - quantity.shoe_drop
    : mm(0)
  EOT
  because = "What is missing under the heel, beyond the shoe's own differential, for the lean at which tuning starts; negative where the shoe gives more; none where stance needs nothing."
}

quantity "heel_raise_wanted" {
  unit    = "mm"
  value   = "greatest(mm(0), quantity.heel_short_by)"
  because = "A raise adds, it takes nothing off the shoe."
}

quantity "sole_pitch" {
  unit    = "deg"
  value   = "pitch_along_plate(quantity.shoe_drop + quantity.heel_raise_wanted, limb.heel_to_ball_length)"
  because = "Tilt of the foot plate in the shoe, raise included, heel up."
}

quantity "device_shank_to_vertical" {
  unit    = "deg"
  value   = "shank_to_vertical(quantity.sole_pitch, quantity.cast_angle)"
  because = "Lean of the shank in this shoe with this raise, before the strut gives."
}

quantity "ankle_axis_height" {
  unit    = "mm"
  value   = "(limb.medial_malleolus_height + limb.lateral_malleolus_height) / 2.0"
  because = "The ankle's axis runs through both malleoli; half-way between them in the middle of the ankle."
}

quantity "forefoot_lever" {
  unit    = "mm"
  value   = "limb.heel_to_ball_length - limb.ankle_to_heel_back"
  because = "From the ankle's axis forward to the ball."
}

quantity "shank_lever" {
  unit    = "mm"
  value   = "limb.shank_contact_height - quantity.ankle_axis_height"
  because = "From the ankle's axis up to the middle of the shank shell."
}

quantity "ankle_rise_of_heel_raise" {
  unit    = "mm"
  value   = "ankle_rise(quantity.heel_raise_wanted, limb.heel_to_ball_length, quantity.forefoot_lever, quantity.ankle_axis_height)"
  because = "How much a raise under the heel alone lengthens this leg: about seven tenths of it."
}

quantity "opposite_side_lower_by" {
  unit    = "mm"
  value   = <<-EOT
    opposite_raise(quantity.ankle_rise_of_heel_raise, limb.device_thickness_under_ball + limb.shoe_forefoot_height,
      other.shoe_forefoot_height, limb.pelvis_levelling_block - other.pelvis_levelling_block)
  EOT
  because = "How much lower the other side then stands: the rise of this ankle and the device under it, less what this leg is short by the blocks; negative where this side is still the lower."
  cites   = ["leg_length_blocks"]
}

# Moments

quantity "normal_peak_moment" {
  unit    = "N.m"
  value   = "peak_ankle_moment(person.body_mass)"
  because = "The peak moment of the calf in walking at free speed: 1.216 N·m for each kilogram, SD 0.226."
  cites   = ["schwartz_2008"]
}

quantity "moment_into_plantarflexion" {
  unit    = "N.m"
  value   = <<-EOT
    finding.foot_pulled_down || finding.knee_goes_back ? limb.plantarflexor_resistance
    : finding.swing_only ? swing_resistance_most(person.body_mass, deg(1)) * deg(1)
    : Nm(0)
  EOT
  because = "What the device holds up against: the calf's resistance as measured, or the foot in swing."
  cites   = ["kobayashi_2017"]
}

quantity "moment_into_dorsiflexion" {
  unit    = "N.m"
  value   = "finding.shank_falls_forward ? greatest(Nm(0), quantity.normal_peak_moment - limb.plantarflexor_moment) : Nm(0)"
  because = "What the device holds the shank back with: the peak moment of normal walking, less the calf's own."
  cites   = ["schwartz_2008"]
}

quantity "greater_moment" {
  unit  = "N.m"
  value = "greatest(quantity.moment_into_plantarflexion, quantity.moment_into_dorsiflexion)"
}

# Forces, seen from the side

quantity "force_at_calf" {
  unit    = "N"
  value   = "bent_shank_force(quantity.moment_into_plantarflexion, quantity.shank_lever)"
  because = "Forward on the calf, where the foot is held up."
}

quantity "force_at_instep" {
  unit    = "N"
  value   = "quantity.moment_into_plantarflexion > Nm(0) ? bent_ankle_force(quantity.moment_into_plantarflexion, quantity.shank_lever, quantity.forefoot_lever, quantity.cast_angle) : N(0)"
  because = "Down and back over the instep, through the ankle: it closes the triangle of calf and forefoot."
}

quantity "force_at_shin" {
  unit    = "N"
  value   = "bent_shank_force(quantity.moment_into_dorsiflexion, quantity.shank_lever)"
  because = "Back on the shin, where the shank is kept from falling forward."
}

quantity "force_at_heel" {
  unit    = "N"
  value   = "quantity.moment_into_dorsiflexion > Nm(0) ? bent_ankle_force(quantity.moment_into_dorsiflexion, quantity.shank_lever, quantity.forefoot_lever, quantity.cast_angle) : N(0)"
  because = "Forward and up at the heel, through the ankle: it closes the triangle of shin and forefoot."
}

quantity "force_under_forefoot" {
  unit    = "N"
  value   = "bent_forefoot_force(quantity.greater_moment, quantity.forefoot_lever)"
  because = "Up under the ball: on the foot where it is held up, from the floor on the foot plate where the shank is held back."
}

# Forces, seen from behind

quantity "force_at_ankle_lateral" {
  unit    = "N"
  value   = "finding.varus_in_stance ? three_point_middle_force(limb.hindfoot_resistance, quantity.shank_lever, quantity.ankle_axis_height) : N(0)"
  because = "Inwards on the outer side of the ankle, against varus."
}

quantity "force_at_ankle_medial" {
  unit    = "N"
  value   = "finding.valgus_in_stance ? three_point_middle_force(limb.hindfoot_resistance, quantity.shank_lever, quantity.ankle_axis_height) : N(0)"
  because = "Outwards on the inner side of the ankle, against valgus."
}

quantity "force_at_shank_frontal" {
  unit    = "N"
  value   = "finding.varus_in_stance || finding.valgus_in_stance ? three_point_outer_force(limb.hindfoot_resistance, quantity.shank_lever) : N(0)"
  because = "At the shank shell, on the side away from the ankle's force."
}

quantity "force_at_foot_frontal" {
  unit    = "N"
  value   = "finding.varus_in_stance || finding.valgus_in_stance ? three_point_outer_force(limb.hindfoot_resistance, quantity.ankle_axis_height) : N(0)"
  because = "At the foot, on the side away from the ankle's force; the lever is the ankle's height, so it is the largest of the outer ones."
}

# Pressure: means, edges and bone carry more

quantity "force_at_shank" {
  unit  = "N"
  value = "greatest(quantity.force_at_calf, quantity.force_at_shin)"
}

quantity "shank_radius" {
  unit    = "mm"
  value   = "limb.calf_girth / 6.283185307"
  because = "The calf taken as round, at its greatest girth."
}

quantity "strap_mean_pressure" {
  unit    = "kPa"
  value   = "strap_pressure(quantity.force_at_shank, limb.strap_width, quantity.shank_radius)"
  because = "If a strap alone took the force at the shank."
}

quantity "shell_mean_pressure" {
  unit    = "kPa"
  value   = "mean_pressure(quantity.force_at_shank, shell_area(quantity.shank_radius, limb.shank_shell_height, least(deg(90), limb.shank_shell_half_arc)))"
  because = "If the shell took it with the whole of its surface; what wraps beyond half of the leg adds none."
}

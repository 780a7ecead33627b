# What the figures of the design don't say, and what has to be looked at before they are used.

# Alignment

caution "standing_is_not_walking" {
  level = "note"
  when  = "finding.ankle_is_held && finding.lean_can_be_had"
  says  = "The lean of ${quantity.device_shank_to_vertical} is that of standing, before the strut gives. In a trial every lean set in standing was larger in walking, and a higher heel bent the knee more."
  act   = "Try less, this and more lean in walking, and keep the one at which the knee is best. A range is read to 5 to 6 deg, so wedges finer than about 5 mm are below what can be told."
  basis = "published"
  cites = ["kerkum_thesis", "goniometry_ankle_children"]
}

caution "memory_and_walkers_disagree_on_the_lean" {
  level = "note"
  when  = "finding.ankle_is_held && finding.lean_can_be_had && !finding.walks_very_slowly"
  says  = "Two sides: tuning starts at ${quantity.starting_lean}, a figure from memory for standing in a device; healthy people who walk as fast as this lean ${quantity.lean_at_own_speed} at 30 % of the gait cycle."
  act   = "Start at the lower one, and let the walking decide."
  basis = "published"
  cites = ["owen_2010", "bovi_2011"]
}

caution "only_the_bent_knee_gets_there" {
  level = "note"
  when  = "gastrocnemius_overrun(deg(0), limb.ankle_dorsiflexion_knee_extended, limb.ankle_dorsiflexion_knee_flexed)"
  says  = "With the knee bent the ankle goes to ${limb.ankle_dorsiflexion_knee_flexed}, with it straight to ${limb.ankle_dorsiflexion_knee_extended}: plantigrade is there only with a bent knee."
  act   = "Keep the knee straight while casting, and check the angle of the cast with the knee straight."
  basis = "published"
  cites = ["baumbach_2014"]
}

caution "midfoot_may_hide_equinus" {
  level = "precaution"
  when  = "limb.midfoot_break in ['slight', 'marked'] && (quantity.usable_range >= deg(0) || finding.flat_only_under_load)"
  says  = "The range of ${quantity.usable_range} was found in a foot whose midfoot bends (${limb.midfoot_break}): part of it may not be in the ankle."
  act   = "Measure again with the foot held in supination. If the ankle then stops short, cast it there."
  basis = "published"
  cites = ["dorsiflexion_in_supination"]
}

caution "load_changes_the_hindfoot" {
  level = "note"
  when  = <<-EOT
    limb.hindfoot_corrects_by_hand in ['none_needed', 'fully'] && limb.hindfoot_corrects_standing in ['partly', 'not_at_all']
    || limb.hindfoot_corrects_by_hand in ['partly', 'not_at_all'] && limb.hindfoot_corrects_standing in ['none_needed', 'fully']
  EOT
  says  = "By hand the hindfoot corrects ${limb.hindfoot_corrects_by_hand}, on standing ${limb.hindfoot_corrects_standing}. The design follows what was found on standing, but moves no heel that no hand moves. Common practice, no source."
  act   = "Look again, with the knee straight, before the cast is taken."
  basis = "common_practice"
}

caution "heel_beyond_reach" {
  level = "precaution"
  when  = "finding.heel_beyond_reach"
  says  = "With the ankle at ${quantity.usable_range} the heel would have to stand more than 60 mm above the shoe's, or higher than half of the length from heel to ball, to lean the shank by ${quantity.starting_lean}: no raise is given. Worked out from the geometry; the 60 mm are a starting value without a source."
  act   = "Ask what range can be gained before anything is cast. If a device is still wanted, stand the person on blocks and find the least raise, and the least lean, at which the knee is safe."
  basis = "common_practice"
}

caution "high_heel_raise" {
  level = "precaution"
  when  = "!finding.heel_beyond_reach && quantity.heel_raise_wanted > mm(20)"
  says  = "The heel asks for ${quantity.heel_raise_wanted} beyond the shoe's ${quantity.shoe_drop}: that loads the ball of the foot, and the shoe may not hold it. The limit of 20 mm is a starting value without a source."
  act   = "Try it in standing and walking before the cast, look at the skin under the ball, and ask whether range can be gained or less lean will do."
  basis = "common_practice"
}

caution "other_shoes" {
  level = "precaution"
  when  = "limb.shoe_heel_varies || !limb.shoe_will_be_worn"
  says  = "The design holds for a shoe with ${quantity.shoe_drop} between heel and ball, and others will be worn: lower pushes the knee back, higher bends it."
  act   = "Settle on one heel height before casting, or show how the difference is made up, and check the lean in each pair."
  basis = "published"
  cites = ["kerkum_thesis"]
}

caution "opposite_raise_by_blocks" {
  level = "note"
  when  = "!finding.heel_beyond_reach && quantity.opposite_side_lower_by > mm(0) && other.device_thickness_under_ball == mm(0)"
  says  = "The other side's raise of ${quantity.opposite_side_lower_by} is worked out, and rests on the blocks. Leg lengths agree poorly between observers."
  act   = "Check it with blocks, standing in both shoes and the device; round to what can be built. Blocks that were taken with this heel off the floor count part of the raise twice."
  basis = "published"
  cites = ["leg_length_blocks", "jarvis_2012"]
}

# Stiffness

caution "mass_and_measured_best_disagree" {
  level = "note"
  when  = "finding.calf_cannot_lift && person.age >= years(18)"
  says  = "Two sides: by body mass the strut would have ${quantity.demand_most}; measured person by person, the best was on average 1.2 N·m/° softer than what mass and activity had suggested. A difference of 20 % between people of one mass is usual."
  act   = "Try at least two stiffnesses in walking, and keep the best."
  basis = "published"
  cites = ["waterval_2021", "schwartz_2008"]
}

caution "stiffer_than_any_device" {
  level = "precaution"
  when  = "finding.calf_cannot_lift && finding.stiffer_than_published"
  says  = "For ${person.body_mass} up to ${quantity.demand_most} is worked out: more than the 8.17 N·m/° of the stiffest device in 25 studies, so no figure is aimed at, only the range is shown."
  act   = "Ask the workshop and the makers of the parts what bears this person, and test it in a fixture before it is worn."
  basis = "published"
  cites = ["totah_2019"]
}

caution "outside_the_tried_stiffness" {
  level = "note"
  when  = "finding.calf_cannot_lift && (quantity.demand_most < Nm_per_deg(2.8) || quantity.demand_most > Nm_per_deg(6.6))"
  says  = "Up to ${quantity.demand_most} is worked out here; how stiffness changes walking in calf weakness was tried from 2.8 to 6.6 N·m/° only, in adults."
  act   = "Take the published effect of a stiffer strut as a direction, not as a figure."
  basis = "published"
  cites = ["waterval_2019"]
}

caution "stiffness_without_its_bench" {
  level = "precaution"
  when  = "limb.bench_method in ['by_hand_with_gauge', 'worked_out', 'not_known']"
  says  = "The device's stiffness of ${limb.bench_stiffness} is ${limb.bench_method}. Five benches differed on the same devices by 62 % of the mean, four with a fixture still by 27 %."
  act   = "Compare it only with figures that were taken the same way, or test it in a fixture."
  basis = "published"
  cites = ["shuman_2023"]
}

caution "strain_of_the_strut" {
  level = "note"
  when  = "limb.strut_length > 10.0 * limb.strut_thickness"
  says  = "At 12.8 deg of dorsiflexion, the peak of healthy walking, the strut's surface stretches by ${quantity.strain_of_strut}, a stress of ${quantity.stress_of_strut} if it bends evenly. No limit for a laminate made by hand was found. On a bench, carbon devices broke at the strut's upper end."
  act   = "Compare it with tests of the workshop's own laminate, and look at the upper end at each review."
  basis = "published"
  cites = ["strut_fractures", "schwartz_2008"]
}

# Forces and pressure

caution "forces_against_the_calf_are_a_floor" {
  level = "note"
  when  = "finding.foot_pulled_down || finding.knee_goes_back"
  says  = "The forces that hold the foot up rest on the moment that held the ankle at rest, slowly stretched. On a quick stretch, in standing and in walking tone asks for more. Worked out from how it is measured."
  act   = "Take them as the least that the shells carry, and measure again in standing where tone is more there."
  basis = "common_practice"
}

caution "forces_on_the_shin_are_a_ceiling" {
  level = "note"
  when  = "finding.shank_falls_forward"
  says  = "The forces that hold the shank back are those of a whole healthy push-off at free speed, 1.216 N·m for each kilogram, less the calf's own. In the slowest walking of the same healthy children it was 1.055."
  act   = "Take them as the most that the shells carry in level walking; stairs, slopes and falls were not measured."
  basis = "published"
  cites = ["schwartz_2008"]
}

caution "pressure_that_may_hurt" {
  level = "precaution"
  when  = "finding.ankle_is_held && quantity.shell_mean_pressure > kPa(13.7)"
  says  = "The shell presses ${quantity.shell_mean_pressure} on average, with ${quantity.force_at_shank} at the shank; edges and bone carry more. Discomfort began at 13.7 kPa held on, in healthy adults and at the knee. No pressure inside a worn ankle-foot orthosis is published."
  act   = "Raise the upper edge or lengthen the shell: force falls as the lever grows. Not with a tight wrap all round, which hurt at a lower pressure."
  basis = "published"
  cites = ["kermavnar_2020", "cuff_width"]
}

caution "no_figure_for_skin_that_does_not_feel" {
  level = "precaution"
  when  = "finding.limb_safety.insensate"
  says  = "Protective sensation is ${limb.protective_sensation}. The figures on pressure come from healthy adults who could say that it hurt; none holds for this skin."
  act   = "Judge by the skin, not by a number: look after the first half hour and at every removal."
  basis = "published"
  cites = ["kermavnar_2020", "wear_leaflet"]
}

caution "nerve_under_a_high_edge" {
  level = "note"
  when  = "finding.shank_falls_forward || finding.tone_with_little_range"
  says  = "The upper edge comes near the fibular head, ${limb.fibular_head_height} from the floor, and the nerve runs just below it. Common practice, no source."
  act   = "Keep edge and strap off it, and ask about tingling at the first review."
  basis = "common_practice"
}

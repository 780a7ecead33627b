# Stiffness: of the strut about the ankle, of the foot plate, and what the sole does to the path of the load.

# Quantities

quantity "normal_stiffness" {
  unit    = "N.m/deg"
  value   = "normal_stiffness(person.body_mass)"
  because = "What a healthy ankle of this body mass shows in walking: 0.068 N·m/° for each kilogram, between people within a fifth."
  cites   = ["schwartz_2008", "bovi_2011"]
}

quantity "residual_least" {
  unit    = "1"
  value   = "residual_least_by_heel_rises(limb.heel_rises, quantity.forefoot_lever)"
  because = "The least of normal that the calf can have left, from its heel rises."
  cites   = ["schwartz_2008"]
}

quantity "residual_most" {
  unit    = "1"
  value   = "residual_most_by_heel_rises(limb.heel_rises, quantity.forefoot_lever)"
  because = "The most of normal that the calf can have left, from its heel rises."
  cites   = ["schwartz_2008"]
}

quantity "demand_least" {
  unit    = "N.m/deg"
  value   = "stiffness_demand(person.body_mass, quantity.residual_most)"
  because = "What is left for the strut where the calf has the most that its heel rises allow."
}

quantity "demand_most" {
  unit    = "N.m/deg"
  value   = "stiffness_demand(person.body_mass, quantity.residual_least)"
  because = "What is left for the strut where the calf has the least that its heel rises allow."
}

quantity "softer_demand" {
  unit    = "N.m/deg"
  value   = "greatest(Nm_per_deg(0), quantity.demand_most - Nm_per_deg(1.2))"
  because = "By as much softer as the measured best was, on average, than what had been picked by mass and activity."
  cites   = ["waterval_2021"]
}

quantity "deficit_stiffness" {
  unit    = "N.m/deg"
  value   = "stiffness_from_deficit(quantity.normal_peak_moment, limb.plantarflexor_moment, deg(12.8))"
  because = "The normal peak moment less the calf's own, spread over the 12.8 deg to which the ankle comes at free speed."
  cites   = ["schwartz_2008"]
}

quantity "plantarflexion_that_clears" {
  unit    = "deg"
  value   = "clearance_lost_at(mm(19))"
  because = "How far a foot may drop before it has used up the usual clearance of 19 mm."
  cites   = ["toe_clearance_slope"]
}

quantity "swing_stiffness_least" {
  unit    = "N.m/deg"
  value   = "swing_resistance_least(person.body_mass, quantity.plantarflexion_that_clears)"
  because = "The lower of two published moments that kept the ankle up, over that drop."
  cites   = ["kobayashi_2017", "toe_clearance_slope"]
}

quantity "swing_stiffness_most" {
  unit    = "N.m/deg"
  value   = "swing_resistance_most(person.body_mass, quantity.plantarflexion_that_clears)"
  because = "The higher of two published moments that kept the ankle up, over that drop."
  cites   = ["kobayashi_2017", "toe_clearance_slope"]
}

quantity "strain_of_strut" {
  unit    = "%"
  value   = "strut_strain(limb.strut_thickness, limb.strut_length, deg(12.8))"
  because = "Of the outer fibre, at the peak dorsiflexion of healthy walking, the strut bending evenly."
  cites   = ["schwartz_2008"]
}

quantity "stress_of_strut" {
  unit    = "MPa"
  value   = "strut_stress(limb.strut_modulus, limb.strut_thickness, limb.strut_length, deg(12.8))"
  because = "That strain times the bending modulus of the workshop's laminate."
  cites   = ["schwartz_2008"]
}

# The strut

rule "stiffness_that_the_calf_lacks" {
  when     = "finding.calf_cannot_lift"
  because  = "Not one heel rise, without spasticity: the calf has from ${quantity.residual_least} to ${quantity.residual_most} of what walking takes, so the strut stays from ${quantity.demand_least} to ${quantity.demand_most}. Worked out from published curves. In a trial from 2.8 to 6.6 N·m/°, each one more took 1.1° off dorsiflexion and 0.09 W/kg off push-off."
  strength = "conditional"
  basis    = "published"
  cites    = ["schwartz_2008", "bovi_2011", "waterval_2019"]

  advise "strut_stiffness" {
    at_least = "quantity.demand_least"
    at_most  = "quantity.demand_most"
  }
}

rule "stiffness_by_body_mass" {
  when     = "finding.calf_cannot_lift && !finding.stiffer_than_published"
  because  = "By habit the strut is picked by body mass (${person.body_mass}): as stiff as the ankle that it stands in for, ${quantity.demand_most}. Common practice; the stiffness for each kilogram is worked out from published curves."
  strength = "conditional"
  basis    = "common_practice"

  advise "strut_stiffness" { aim = "quantity.demand_most" }
}

rule "softer_than_by_body_mass" {
  when     = "finding.calf_cannot_lift && person.age >= years(18) && !finding.stiffer_than_published"
  because  = "Picked by mass and activity, the strut matched the best that was measured in 8 of 34 adults and was 1.2 N·m/° too stiff on average: so ${quantity.softer_demand}."
  strength = "conditional"
  basis    = "published"
  cites    = ["waterval_2021"]

  advise "strut_stiffness" { aim = "quantity.softer_demand" }
}

rule "stiffness_by_the_measured_deficit" {
  when     = "finding.calf_cannot_lift && limb.plantarflexor_moment < quantity.normal_peak_moment && !finding.stiffer_than_published"
  because  = "The calf gives ${limb.plantarflexor_moment} on the dynamometer; what is missing to the normal peak, spread over the usual dorsiflexion, is ${quantity.deficit_stiffness}. Worked out; that the deficit sets the stiffness is published, its equation was not seen."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["arch_2016", "schwartz_2008"]

  advise "strut_stiffness" { aim = "quantity.deficit_stiffness" }
}

rule "stiffness_for_the_swing" {
  when     = "finding.swing_only"
  because  = "Only the swing needs help: from ${quantity.swing_stiffness_least} to ${quantity.swing_stiffness_most} hold a body of ${person.body_mass} within the usual clearance. Measured into plantarflexion, after stroke, on hinges."
  strength = "conditional"
  basis    = "published"
  cites    = ["kobayashi_2017", "toe_clearance_slope"]

  advise "strut_stiffness" {
    at_least = "quantity.swing_stiffness_least"
    at_most  = "quantity.swing_stiffness_most"
  }
}

# Foot plate and sole

rule "long_stiff_plate_to_hold_the_shank" {
  when     = "finding.shank_falls_forward"
  because  = "The foot plate is the lever that holds the shank back: long, and stiff as far as the toes. A stiff plate lowered the extensor moment at the knee in a trial; that it is long is common practice, no source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "foot_plate_length" { favour = "full_length" }
  advise "foot_plate_stiffness" {
    at_least = "firm"
    favour   = "rigid"
  }
}

rule "plate_that_gives_for_a_knee_that_goes_back" {
  when     = "finding.knee_goes_back && !finding.shank_falls_forward"
  because  = "A stiff plate drives the knee back, which goes back too far already: it bends at the ball. It follows from what a stiff plate did in a trial; common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "foot_plate_stiffness" { favour = "flexible" }
}

rule "bevel_the_heel_for_a_slap" {
  when     = "limb.gait_loading_foot == 'foot_slap'"
  because  = "The foot slaps down: a heel that touches further forward asks less of the dorsiflexors."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "sole_profile" { favour = "bevelled_heel" }
}

rule "cushion_the_heel_for_a_weak_knee" {
  when     = "finding.weak_quadriceps && finding.ankle_is_held"
  because  = "A held ankle throws the knee forward as weight comes on, and quadriceps of ${limb.quadriceps_power} have to catch it: a soft heel lets the foot down. The first was measured after stroke; the soft heel is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["mulroy_2010"]

  advise "sole_profile" { favour = "cushioned_heel" }
}

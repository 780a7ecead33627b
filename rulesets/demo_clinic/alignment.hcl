# Alignment: the angle and block of the cast, how the hindfoot is taken, and the lean of the shank. It is settled together
# with stiffness and force pattern, before the cast is taken. Common practice, no source.

rule "cast_within_reach" {
  when     = "quantity.usable_range < deg(20)"
  because  = "The ankle gets to ${quantity.usable_range} with the knee extended, and a cast is never taken in a position that the ankle can't get into."
  strength = "strong"
  basis    = "common_practice"

  advise "cast_ankle_angle" { at_most = "quantity.usable_range" }
}

rule "cast_for_the_shoe" {
  when     = "quantity.usable_range >= deg(0)"
  because  = "The ankle reaches plantigrade, so the foot is cast at a right angle on a block of the shoe's differential, ${quantity.shoe_drop}."
  strength = "strong"
  basis    = "common_practice"

  advise "cast_ankle_angle" { aim = "deg(0)" }
  advise "cast_block_height" { aim = "quantity.shoe_drop" }
}

rule "cast_where_the_ankle_stops" {
  when     = "quantity.usable_range < deg(0)"
  because  = "The ankle stops at ${quantity.usable_range}, ${quantity.equinus_angle} short of plantigrade. It is cast there."
  strength = "strong"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "cast_ankle_angle" { aim = "quantity.usable_range" }
}

rule "block_under_a_short_ankle" {
  when     = "quantity.usable_range < deg(0) && quantity.heel_gap <= mm(60)"
  because  = "The ankle stops at ${quantity.usable_range}: a block of ${quantity.needed_block} supports the heel where it stands. Higher than 60 mm nobody stands to be cast; that limit is a demonstration value."
  strength = "strong"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "cast_block_height" {
    at_least = "quantity.heel_gap"
    aim      = "quantity.needed_block"
  }
}

rule "build_up_the_heel" {
  when     = "quantity.needed_block > quantity.shoe_drop && quantity.needed_block - quantity.shoe_drop <= mm(60)"
  because  = "The heel stands ${quantity.heel_gap} up and the shoe gives ${quantity.shoe_drop}: what is missing is built up under it, and more where tuning asks for it, in a shoe that can take it. The pointed foot makes this leg longer by about ${quantity.lift_of_this_side}, so the other side is raised as much. More than 60 mm is not built up; that limit is a demonstration value."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "heel_raise" { at_least = "quantity.needed_block - quantity.shoe_drop" }
  advise "heel_raise_opposite" { aim = "quantity.lift_of_this_side" }
}

rule "level_with_blocks" {
  when     = "quantity.usable_range < deg(0) && other.pelvis_levelling_block > mm(0)"
  because  = "Blocks of ${other.pelvis_levelling_block} under the other foot level the pelvis. Blocks are to be trusted more than a tape or a calculation."
  strength = "strong"
  basis    = "published"
  cites    = ["leg_length_blocks", "leg_length_tape"]

  advise "heel_raise_opposite" { aim = "other.pelvis_levelling_block" }
}

rule "cast_under_load" {
  when     = "finding.flat_only_under_load"
  because  = "This foot only comes flat under body weight, and it is under body weight that it will walk: the cast is taken standing on it."
  strength = "strong"
  basis    = "common_practice"

  advise "cast_loading" {
    at_least = "partly_loaded"
    favour   = "loaded"
  }
}

rule "hindfoot_corrects_fully" {
  when     = "limb.hindfoot_corrects_standing in ['none_needed', 'fully']"
  because  = "In standing the heel is in line or comes into it, so it is cast in line."
  strength = "conditional"
  basis    = "common_practice"

  advise "hindfoot_in_cast" { favour = "corrected" }
}

rule "hindfoot_corrects_partly" {
  when     = "limb.hindfoot_corrects_standing == 'partly'"
  because  = "In standing the heel comes part of the way: the cast goes as far as the heel does, and no further."
  strength = "strong"
  basis    = "common_practice"

  advise "hindfoot_in_cast" {
    at_most = "partly_corrected"
    favour  = "partly_corrected"
  }
}

rule "hindfoot_stays" {
  when     = "limb.hindfoot_corrects_standing == 'not_at_all'"
  because  = "The heel does not move towards the line, so it is taken as it is."
  strength = "strong"
  basis    = "common_practice"

  advise "hindfoot_in_cast" { only = "accommodated" }
}

rule "lean_the_shank" {
  when     = "finding.equinus || finding.spastic_calf || finding.shank_falls_forward || finding.knee_thrown_back"
  because  = "A device that holds the ankle sets the lean of the shank. Tuning starts at 11 deg and stays within 7 to 15, figures from memory. In this shoe with nothing added: ${quantity.lean_in_own_shoe}; wedges at the fitting make up the rest, as far as a shoe can carry them."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010", "eddison_2017"]

  advise "shank_to_vertical_target" {
    at_least = "deg(7)"
    at_most  = "deg(15)"
    aim      = "deg(11)"
  }
}

rule "less_lean_for_weak_quadriceps" {
  when     = "limb.quadriceps_power < muscle_power('4')"
  because  = "Quadriceps of ${limb.quadriceps_power} can't hold the knee that a leaning shank bends. The limit of 10 deg is a demonstration value."
  strength = "strong"
  basis    = "common_practice"

  advise "shank_to_vertical_target" { at_most = "deg(10)" }
}

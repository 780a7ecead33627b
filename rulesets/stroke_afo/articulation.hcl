# Whether the ankle moves in the device.

rule "leave_the_shank_free" {
  when     = "!finding.contracture && !finding.stance_steady"
  unless   = "finding.clonus || finding.shank_not_held || finding.knee_goes_back && finding.quadriceps_weak"
  because  = "The ankle goes to ${limb.ankle_dorsiflexion_knee_extended}: without a contracture a rigid device held back the shank in stance and the knee in swing, so a joint lets the shank come forward. Where stance is steady a spring does that by itself. Clonus, a shank or knee that nothing holds, and a knee that goes back over a weak quadriceps have advice of their own."
  strength = "conditional"
  basis    = "published"
  cites    = ["mulroy_2010"]

  advise "device" { favour = "articulated" }
  advise "articulation" { favour = ["free", "plantarflexion_stop", "plantarflexion_resist", "dorsiflexion_assist"] }
}

rule "hold_the_ankle_with_a_contracture" {
  when     = "finding.contracture"
  because  = "The ankle stops at ${limb.ankle_dorsiflexion_knee_extended}. What a rigid device took from stance and swing it took only from people without a contracture, so here it costs little."
  strength = "conditional"
  basis    = "published"
  cites    = ["mulroy_2010"]

  advise "articulation" { favour = "none" }
}

rule "stop_a_shank_that_comes_forward" {
  when     = "limb.gait_midstance_ankle == 'too_far_forward'"
  because  = "The shank comes too far over the foot, so dorsiflexion is stopped: by a stop, or by having no joint. Teaching, not a trial."
  strength = "conditional"
  basis    = "published"
  cites    = ["ankle_control_teaching"]

  advise "articulation" { favour = ["none", "dorsiflexion_stop", "both_stops"] }
}

rule "give_at_loading_for_a_weak_quadriceps" {
  when     = "finding.quadriceps_weak"
  unless   = "finding.knee_goes_back"
  because  = "The quadriceps is ${limb.quadriceps_power}. A stop against plantarflexion was seen to bend the knee as weight comes on. That an ankle which gives there is easier to bear is our reading of a line that was cut; a cushioned heel in its place is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["mulroy_2010"]

  advise "articulation" { favour = "plantarflexion_resist" }
  advise "sole_profile" { favour = "cushioned_heel" }
}

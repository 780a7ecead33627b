# Whether the ankle moves in the device.

rule "leave_the_shank_free" {
  when     = "!finding.contracture && !finding.stance_steady"
  unless   = "finding.clonus || finding.knee_goes_back && finding.quadriceps_weak"
  because  = "The ankle goes to ${limb.ankle_dorsiflexion_knee_extended}: without a contracture a rigid device held back the shank in stance and the knee in swing, so a joint lets the shank come forward. Where stance is steady a spring does that by itself; clonus, or a knee that goes back over a weak quadriceps, has advice of its own."
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

rule "give_at_loading_for_a_weak_quadriceps" {
  when     = "finding.quadriceps_weak"
  unless   = "finding.knee_goes_back"
  because  = "The quadriceps is ${limb.quadriceps_power}. A stop against plantarflexion bends the knee as weight comes on; an ankle that gives there may be easier to bear. A cushioned heel does the same under a device that does not give: that part is common practice."
  strength = "conditional"
  basis    = "published"
  cites    = ["mulroy_2010"]

  advise "articulation" { favour = "plantarflexion_resist" }
  advise "sole_profile" { favour = "cushioned_heel" }
}

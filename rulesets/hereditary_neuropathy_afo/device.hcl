# Which family of device.

rule "insole_for_a_child" {
  when     = "finding.limb_safety.growing && finding.high_arch && (limb.foot_ankle_pain >= 1 || finding.balance_a_little_poor) && !finding.walks_with_difficulty"
  because  = "A child with a high arch, pain ${limb.foot_ankle_pain} of 10 and standing balance ${person.standing_balance}, who does not trip: support inside the shoe is the algorithm's first step."
  strength = "conditional"
  basis    = "published"
  cites    = ["scheffers_2012"]

  advise "device" { favour = "insole" }
}

rule "orthosis_for_a_child" {
  when     = "finding.child_needs_orthosis"
  because  = "A child with a high arch whose foot ${limb.gait_swing_ankle} in swing (heel rise ${limb.heel_rise_height}, dorsiflexion ${limb.ankle_dorsiflexion_knee_extended}) and who trips or stands unsurely: the algorithm goes on to an ankle-foot orthosis. Which, the part that was read does not say."
  strength = "conditional"
  basis    = "published"
  cites    = ["scheffers_2012"]

  advise "device" { favour = ["posterior_leaf_spring", "composite", "articulated", "rigid"] }
}

rule "composite_before_rigid_for_a_child" {
  when     = "finding.child_needs_orthosis"
  because  = "Two adolescents walked further in two minutes in a composite device than in a rigid one, and liked it better. It was not compared with a leaf spring or a hinge; this is thin."
  strength = "conditional"
  basis    = "published"
  cites    = ["borghi_2023"]

  advise "device" { favour = "composite" }
}

rule "light_device_for_the_drop" {
  when     = "finding.only_the_drop"
  because  = "Only the swing is at fault: the foot ${limb.gait_swing_ankle}, the calf lifts the heel, the ankle is steady and goes to ${limb.ankle_dorsiflexion_knee_extended}. The lightest device that lifts the foot will do, without a joint. In seven adults an elastic one in front of the ankle made walking cheaper than shoes alone; it was not compared with another device."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table", "menotti_2014"]

  advise "device" { favour = ["elastic_lifter", "posterior_leaf_spring", "composite"] }
  advise "articulation" { favour = "none" }
}

rule "sides_for_a_drop_that_tips" {
  when     = "finding.foot_drops && finding.ankle_unsteady && !finding.calf_very_weak"
  because  = "The foot ${limb.gait_swing_ankle} in swing and the ankle tips sideways, while the calf still lifts the heel: the device lifts the foot and holds it from both sides, which a lifter and an open spring do not. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" {
    never  = ["elastic_lifter", "posterior_leaf_spring"]
    favour = ["composite", "rigid"]
  }
}

rule "hold_a_drop_on_a_stiff_ankle" {
  when     = "finding.foot_drops && finding.limb_safety.equinus"
  because  = "The foot ${limb.gait_swing_ankle} in swing, and by hand the ankle goes only to ${limb.ankle_dorsiflexion_knee_extended}: what only lifts in swing can't lift it, so the device takes the foot where it stops and holds it there. That passive range is tested before a device for the swing is published; the rest is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["foot_drop_wiki"]

  advise "device" {
    never  = ["elastic_lifter", "posterior_leaf_spring"]
    favour = ["composite", "rigid"]
  }
}

rule "replace_the_calf" {
  when     = "finding.calf_very_weak && finding.ankle_unsteady"
  because  = "The calf is very weak (heel rise ${limb.heel_rise_height}) and the ankle tips: the base is unsure, and the device has to do what the calf does. That much was read; that a composite strut or a shell in front does it is from memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["composite", "anterior_shell_ground_reaction"] }
}

rule "keep_it_light" {
  when     = "finding.calf_very_weak && finding.foot_drops"
  because  = "The leg is weak up and down (heel rise ${limb.heel_rise_height}, the foot ${limb.gait_swing_ankle} in swing), so every gram at the foot is felt. That weight costs energy was said of legs after polio; that composite is the light way to build it is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kelley_2007"]

  advise "device" { favour = "composite" }
}

rule "no_stimulation_of_a_lost_nerve" {
  when     = "finding.foot_drops"
  because  = "The foot ${limb.gait_swing_ankle} because its nerve is failing, and a muscle without its nerve does not answer to stimulation. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { never = "functional_stimulation" }
}

rule "shell_in_front_for_a_weak_calf" {
  when     = "finding.calf_very_weak && limb.gait_midstance_ankle == 'too_far_forward'"
  because  = "The calf lets the shank fall forward (heel rise ${limb.heel_rise_height}): a shell in front of it stops that. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_side" { favour = "anterior" }
  advise "pressure_system" { favour = "against_shank_advance" }
}

clinician_decides "device" {
  because  = "No source was read that names a device for a leg that neither drops nor tips, a weak calf on a steady ankle, or an adult's painful high arch."
  consider = ["Heel rise ${limb.heel_rise_height}, midstance ${limb.gait_midstance_ankle}: a calf that lets the shank fall forward wants a spring or a shell", "What the person gives up because of the foot: ${person.main_goal}", "Pain ${limb.foot_ankle_pain} of 10; shoes, insoles and a trial come before a shell", "A step-wise algorithm for adults exists; its steps were not read"]
}

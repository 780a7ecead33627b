# The knee that goes back in stance, from one series of 22 people: no comparison, and more than one cause in each. Then
# the shank that comes too far forward.

rule "rigid_for_a_knee_that_goes_back" {
  when     = "finding.knee_goes_back && (finding.ankle_very_weak || finding.clonus)"
  because  = "The knee ${limb.gait_midstance_knee}; dorsiflexors ${limb.dorsiflexor_power}, plantarflexors ${limb.plantarflexor_power}, clonus ${limb.clonus_beats} beats. With severe weakness up and down, or clonus, the series held the ankle, with or without a heel lift."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015"]

  advise "device" { favour = "rigid" }
  advise "articulation" { favour = "none" }
}

rule "plantarflexion_stop_for_a_knee_that_goes_back" {
  when     = "finding.knee_goes_back && finding.dorsiflexors_less_weak && !finding.clonus && !finding.quadriceps_weak"
  because  = "The knee ${limb.gait_midstance_knee}, the dorsiflexors still lift the foot (${limb.dorsiflexor_power}), there is no clonus (${limb.clonus_beats} beats) and the quadriceps is not weak (${limb.quadriceps_power}): the series took a hinge with an adjustable stop, with or without a heel lift."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015"]

  advise "device" { favour = "articulated" }
  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "two_way_joint_for_a_weak_quadriceps" {
  when     = "finding.knee_goes_back && finding.quadriceps_weak"
  because  = "The knee ${limb.gait_midstance_knee} and the quadriceps is ${limb.quadriceps_power}: the series took a joint that is adjusted in both directions, with or without a heel lift. A further reason was named in a line that could not be read."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015"]

  advise "device" { favour = "articulated" }
  advise "articulation" { favour = "both_stops" }
}

rule "tone_first_for_a_knee_that_goes_back" {
  when     = "finding.knee_goes_back && (finding.limb_safety.tone_marked || finding.clonus)"
  because  = "The knee ${limb.gait_midstance_knee} under tone of ${limb.plantarflexor_tone} with ${limb.clonus_beats} beats of clonus: the series injected the calf first, or alongside the device."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015"]

  advise "device" { favour = "refer_tone_management" }
}

rule "knee_brace_is_the_last_step" {
  when     = "finding.knee_goes_back && limb.gait_seen_in == 'present_device' && limb.present_device in ['composite', 'articulated', 'rigid', 'anterior_shell_ground_reaction']"
  because  = "The knee still ${limb.gait_midstance_knee} in the ${limb.present_device} device. A knee-ankle-foot orthosis with an offset joint is the step that the series tried to avoid; for covering the knee the evidence is limited."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015", "geerars_2022"]

  advise "device" { favour = "knee_ankle_foot" }
}

rule "shell_in_front_of_a_shank_that_comes_forward" {
  when     = "limb.gait_midstance_ankle == 'too_far_forward'"
  because  = "The shank comes too far over the foot and the knee is “${limb.gait_midstance_knee}”: a shell in front of the shank holds it back, against heel and forefoot. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "anterior_shell_ground_reaction" }
  advise "shell_side" { favour = "anterior" }
  advise "pressure_system" { favour = "against_shank_advance" }
}

# What tone, clonus, range and fixed shape forbid of the alignment and the ankle joint.

rule "no_free_joint_on_lasting_clonus" {
  when     = "finding.clonus_does_not_fade"
  because  = "Clonus does not fade (${limb.clonus_beats} beats), and a free joint lets it go on beating. After stroke the ankle with clonus was held."
  strength = "conditional"
  basis    = "published"
  cites    = ["appasamy_2015", "degowin_1987"]

  advise "articulation" {
    never  = "free"
    favour = "none"
  }
}

rule "hold_the_ankle_from_five_beats" {
  when     = "finding.clonus_in_dispute"
  because  = "${limb.clonus_beats} beats: sustained by those who draw the line at five, and then the ankle is held."
  strength = "conditional"
  basis    = "published"
  cites    = ["clonus_five_beats", "appasamy_2015"]

  advise "articulation" { favour = "none" }
}

rule "joint_with_stop_up_to_ten_beats" {
  when     = "finding.clonus_in_dispute"
  because  = "${limb.clonus_beats} beats: not sustained by those who draw the line at ten, and then a joint with a plantarflexion stop is still possible."
  strength = "conditional"
  basis    = "published"
  cites    = ["degowin_1987", "appasamy_2015"]

  advise "articulation" { favour = "plantarflexion_stop" }
}

rule "no_free_joint_on_a_short_calf" {
  when     = "finding.equinus"
  because  = "The ankle is short of plantigrade (${limb.ankle_dorsiflexion_knee_extended}), so a free joint would find its movement in the midfoot or at the knee."
  strength = "conditional"
  basis    = "published"
  cites    = ["teaching_utilisation"]

  advise "articulation" { never = "free" }
}

rule "never_cast_beyond_the_range" {
  when     = "finding.equinus"
  because  = "With the knee straight the ankle goes to ${limb.ankle_dorsiflexion_knee_extended} and no further: a cast is never taken in a position that the ankle can't get into. Common practice, no source."
  strength = "strong"
  basis    = "common_practice"

  advise "cast_ankle_angle" { at_most = "limb.ankle_dorsiflexion_knee_extended" }
}

rule "accommodate_a_fixed_hindfoot" {
  when     = "finding.hindfoot_fixed"
  because  = "The heel can't be brought under the shank by hand, so it is taken as it is: a shell that forces it only makes a wound."
  strength = "conditional"
  basis    = "published"
  cites    = ["teaching_precautions", "block_test"]

  advise "hindfoot_in_cast" { only = "accommodated" }
}

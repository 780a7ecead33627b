# How a heel in varus is taken. The block test decides; what follows for the orthosis is common practice.

rule "post_a_varus_that_corrects" {
  when     = "finding.varus_corrects"
  because  = "On the block the heel comes straight, so the dropped first ray tips it: a recess lets that ray down, a lateral wedge under the heel does the rest. The test is published, what it means for the device is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["block_test"]

  advise "hindfoot_in_cast" { favour = "corrected" }
  advise "hindfoot_posting" { favour = "lateral" }
  advise "forefoot_posting" { favour = "first_ray_recess" }
}

rule "take_part_of_a_varus" {
  when     = "finding.varus_heel && limb.block_test == 'corrects_partly'"
  because  = "On the block the heel comes part of the way: it is taken as far as it goes and not further. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "hindfoot_in_cast" {
    at_most = "partly_corrected"
    favour  = "partly_corrected"
  }
}

rule "take_a_stiff_varus_as_it_is" {
  when     = "finding.varus_stiff"
  because  = "On the block the heel stays in varus: the device takes the foot as it stands, because force only makes a sore on the outer border. Common practice; that a stiff foot needs surgery of both ends to be straight was read."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["block_test"]

  advise "hindfoot_in_cast" { only = "accommodated" }
}

rule "pull_against_varus" {
  when     = "finding.varus_gives"
  unless   = "finding.limb_safety.insensate"
  because  = "The heel stands in varus, corrects on the block (${limb.block_test}) and tips: three points against varus, with a strap that pulls from the lateral side, on skin that feels it."
  strength = "conditional"
  basis    = "published"
  cites    = ["varus_strap"]

  advise "pressure_system_frontal" { favour = "against_varus" }
  advise "ankle_strap" { favour = "pull_from_lateral" }
}

rule "wrap_insensate_varus" {
  when     = "finding.varus_gives && finding.limb_safety.insensate"
  because  = "The heel stands in varus and tips, and sensation is ${limb.protective_sensation}: the same three points, spread over a high lateral wall. A strap over skin that can't feel is an edge. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_frontal" { favour = "against_varus" }
  advise "ankle_strap" { never = ["pull_from_lateral", "pull_from_medial"] }
  advise "foot_shell" { favour = "high_lateral" }
}

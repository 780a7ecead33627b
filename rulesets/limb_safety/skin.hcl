# What skin asks of padding, closure, edges and relief. All of it is common practice without a source.

rule "line_skin_that_needs_care" {
  when     = "finding.skin_needs_care"
  because  = "Skin that can't feel or is fragile wants more area and fewer edges: a lining under every bony place at least, and no narrow strap. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "padding" {
    at_least = "at_bony_places"
    favour   = "whole_shell"
  }
  advise "closure" { never = "strap" }
}

rule "line_skin_that_hurts_to_touch" {
  when     = "limb.touch_oversensitive"
  because  = "Touch is felt as pain, so no bare edge or bony place meets the shell. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "padding" { at_least = "at_bony_places" }
}

rule "strap_that_lets_out" {
  when     = "finding.swelling_varies"
  because  = "What closes the device must be let out and taken in through the day: a wide padded strap does that best. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { favour = "wide_padded_strap" }
}

rule "keep_the_edge_below_the_knee" {
  when     = "finding.skin_broken_at_knee"
  because  = "An open place near the knee (fibular head ${limb.fibular_head_skin}, patellar tendon ${limb.patellar_tendon_skin}, behind the knee ${limb.popliteal_skin}): the upper edge stays well below it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "proximal_height" { at_most = "mid_calf" }
}

rule "keep_the_strut_off_the_medial_side" {
  when     = "limb.medial_shank_skin in ['broken', 'red_after_pressure']"
  because  = "The skin on the medial side of the shank is ${limb.medial_shank_skin}: no strut or hard edge runs there. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "strut_place" { never = ["medial", "medial_and_lateral"] }
}

rule "keep_the_strut_off_the_lateral_side" {
  when     = "limb.lateral_shank_skin in ['broken', 'red_after_pressure']"
  because  = "The skin on the lateral side of the shank is ${limb.lateral_shank_skin}: no strut or hard edge runs there. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "strut_place" { never = ["lateral", "medial_and_lateral"] }
}

rule "keep_the_strap_off_the_front_of_the_ankle" {
  when     = "limb.front_of_ankle_skin in ['fragile', 'red_after_pressure', 'broken']"
  because  = "The skin at the front of the ankle is ${limb.front_of_ankle_skin}: no instep strap crosses it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" { never = "instep" }
}

rule "keep_the_strap_off_the_top_of_the_foot" {
  when     = "limb.foot_dorsum_skin in ['fragile', 'red_after_pressure', 'broken']"
  because  = "The skin on top of the foot is ${limb.foot_dorsum_skin}: no instep strap pulls across it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "ankle_strap" { never = "instep" }
}

rule "no_narrow_strap_on_marked_skin" {
  when     = "finding.skin_red_at_shank || finding.skin_broken_at_shank"
  because  = "The skin where a shank shell bears is marked or open (front of the shin ${limb.anterior_shin_skin}, back of the calf ${limb.posterior_calf_skin}): no narrow strap cuts into it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { never = "strap" }
}

rule "no_narrow_strap_on_poor_flow" {
  when     = "finding.poor_circulation || finding.circulation_in_question && finding.critical_circulation"
  because  = "The flow to this leg is poor or likely to be: nothing narrow is pulled tight round it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { never = "strap" }
}

rule "no_narrow_strap_after_thrombosis" {
  when     = "person.venous_disease == 'recent_thrombosis'"
  because  = "A thrombosis within three months: nothing narrow is pulled tight round the leg. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { never = "strap" }
}

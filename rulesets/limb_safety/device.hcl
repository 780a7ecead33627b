# What is seen to before any device, and what a leg forbids. What must not touch the leg is taken away (never);
# where to send is favoured, so that several opinions can stand beside each other.

rule "wound_care_first" {
  when     = "finding.skin_broken"
  because  = "The skin is open where almost every device touches, so the wound is looked after before anything new is put on it."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["contact_exclusions", "teaching_precautions"]

  advise "device" {
    never  = ["supra_malleolar", "posterior_leaf_spring", "composite", "articulated", "rigid", "anterior_shell_ground_reaction", "knee_ankle_foot", "refer_serial_casting"]
    favour = "refer_wound_care"
  }
}

rule "offloading_service_for_an_ulcer" {
  when     = "person.diabetes != 'none' && finding.insensate && finding.ulcer_under_foot"
  because  = "Diabetes, protective sensation ${limb.protective_sensation}, and an ulcer under the foot: a knee-high offloading device that stays on is the first choice unless infection, poor flow or falls speak against it. That is a foot service's work, not an orthosis of this kind."
  strength = "strong"
  basis    = "published"
  cites    = ["australian_offloading_2021", "offloading_2023"]

  advise "device" { favour = "refer_foot_protection" }
}

rule "foot_protection_first" {
  when     = "limb.hot_swollen_foot"
  because  = "A hot, swollen foot is not cast and not loaded in a shell before it is known why; a foot service sees it the same day."
  strength = "strong"
  basis    = "from_memory"
  cites    = ["charcot_2023"]

  advise "device" {
    never  = ["supra_malleolar", "posterior_leaf_spring", "composite", "articulated", "rigid", "anterior_shell_ground_reaction", "knee_ankle_foot", "refer_serial_casting"]
    favour = "refer_foot_protection"
  }
}

rule "vascular_opinion_first" {
  when     = "finding.poor_circulation"
  because  = "The flow to this foot is poor or likely to be, so a vascular opinion comes before a device that presses or corrects, and no cast is put on. The figures are published; acting on them this way is common practice."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["pressure_index_2020", "toe_pressure_guidance", "contact_exclusions"]

  advise "device" {
    never  = "refer_serial_casting"
    favour = "refer_vascular_opinion"
  }
}

rule "no_shell_on_critical_circulation" {
  when     = "finding.circulation_in_question && finding.critical_circulation"
  because  = "Pressure index ${limb.ankle_brachial_pressure_index}, ankle pressure ${limb.ankle_systolic_pressure}: the foot is in danger as it is. Nothing presses on it until a vascular service has seen it. The bands are published; keeping shells off is common practice."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["limb_ischaemia_bands"]

  advise "device" {
    never  = ["supra_malleolar", "posterior_leaf_spring", "composite", "articulated", "rigid", "anterior_shell_ground_reaction", "knee_ankle_foot", "refer_serial_casting"]
    favour = "refer_vascular_opinion"
  }
}

# Serial casting: what a guideline shuts out. Broken skin and poor circulation are above.

rule "no_casting_with_marked_swelling" {
  when     = "finding.swelling_marked"
  because  = "Pitting of ${limb.pitting_depth} is marked swelling: no serial cast goes over it."
  strength = "strong"
  basis    = "published"
  cites    = ["contact_exclusions"]

  advise "device" { never = "refer_serial_casting" }
}

rule "no_casting_after_thrombosis" {
  when     = "person.venous_disease == 'recent_thrombosis'"
  because  = "A thrombosis within three months: no serial cast."
  strength = "strong"
  basis    = "published"
  cites    = ["contact_exclusions"]

  advise "device" { never = "refer_serial_casting" }
}

rule "no_casting_of_brittle_bone" {
  when     = "person.low_bone_density"
  because  = "Bone of low density can break before the calf gives: no serial cast."
  strength = "strong"
  basis    = "published"
  cites    = ["contact_exclusions"]

  advise "device" { never = "refer_serial_casting" }
}

rule "no_casting_against_bone" {
  when     = "finding.ankle_blocked"
  because  = "The end of dorsiflexion is hard: bone stops it, and a cast gains nothing there."
  strength = "strong"
  basis    = "published"
  cites    = ["contact_exclusions"]

  advise "device" { never = "refer_serial_casting" }
}

# Tone and range that are seen to first or as well

rule "tone_management_first" {
  when     = "finding.tone_hard_to_move"
  because  = "The calf is hard to move (grade ${limb.plantarflexor_tone}): whoever treats tone sees it before or along with a device, or the device will only fight it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "refer_tone_management" }
}

rule "surgical_opinion_for_severe_equinus" {
  when     = "finding.equinus_severe"
  because  = "The ankle is ${limb.ankle_dorsiflexion_knee_extended} with the knee straight: a device can only take it as it is, so ask what can be gained first. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "refer_surgical_opinion" }
}

rule "no_open_spring_on_a_loose_ankle" {
  when     = "finding.ankle_loose_sideways"
  because  = "The ankle is loose sideways, and a light open spring holds nothing sideways."
  strength = "conditional"
  basis    = "published"
  cites    = ["teaching_utilisation"]

  advise "device" { never = "posterior_leaf_spring" }
}

# Teaching disagrees on the leg that swells: both sides stand here, level.

rule "composite_for_a_leg_that_swells" {
  when     = "finding.swelling_varies"
  because  = "The leg swells through the day. One set of teaching cards asks for a composite device then, because it is light and open."
  strength = "conditional"
  basis    = "published"
  cites    = ["teaching_utilisation"]

  advise "device" { favour = "composite" }
}

rule "jointed_device_for_a_leg_that_swells" {
  when     = "finding.swelling_varies"
  because  = "The leg swells through the day. Another set of teaching cards calls that a precaution for close shells and asks for a jointed device that stands off the leg."
  strength = "conditional"
  basis    = "published"
  cites    = ["teaching_precautions"]

  advise "device" { favour = "articulated" }
}

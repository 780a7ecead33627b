# What no evidence and no practice settles. Where a rule above speaks, it decides; otherwise the choice is the clinician's,
# with what to weigh.

# The device itself

clinician_decides "device" {
  because  = "That it is a custom composite ankle-foot orthosis was decided before this ruleset is asked; what the leg forbids, the safety ruleset says."
  consider = ["The rulesets of the condition choose between families of devices"]
}

clinician_decides "articulation" {
  because  = "A composite strut bends instead of turning on a hinge; where a hinge is wanted, the rulesets of the condition and the safety ruleset speak."
  consider = ["Range with the knee extended: ${limb.ankle_dorsiflexion_knee_extended}; clonus: ${limb.clonus_beats} beats"]
}

# Alignment

clinician_decides "cast_block_height" {
  because  = "Where the ankle stops so far short that the block would be higher than 60 mm or than half of the length from heel to ball, nobody casts standing on it."
  consider = ["The ankle stops at ${quantity.usable_range}", "Casting in lying, and setting the cast up on its heel afterwards", "What range can be gained first"]
}

clinician_decides "cast_loading" {
  because  = "Only for a foot that comes flat under load does practice say how it is cast. No published comparison was found."
  consider = ["Heel in standing: ${limb.heel_contact_standing}", "Tone lying, and whether it is more on standing: ${limb.plantarflexor_tone_standing}", "Whether the person can stand still for the time of the cast"]
}

clinician_decides "hindfoot_posting" {
  because  = "Where the block test does not settle it, nothing published says at which side a heel is raised."
  consider = ["Heel under load: ${limb.gait_midstance_hindfoot}; corrects on standing: ${limb.hindfoot_corrects_standing}", "Block test: ${limb.block_test}", "Wear of the shoe: ${limb.shoe_wear}"]
}

clinician_decides "forefoot_posting" {
  because  = "A first ray that comes up, and a forefoot that is partly stiff, are posted or accommodated by judgement."
  consider = ["First ray: ${limb.first_ray_position}, corrects ${limb.first_ray_corrects}", "Forefoot on standing: ${limb.forefoot_corrects_standing}; forefoot to hindfoot ${limb.forefoot_to_hindfoot_angle}", "Callus: ${limb.plantar_callus}"]
}

clinician_decides "shank_to_vertical_target" {
  because  = "Where stance needs nothing from the device, the shank stands as the shoe lets it. Where the ankle stops more than 19 deg short of plantigrade, no heel leans it by 11 deg."
  consider = ["Lean in this shoe with the raise that is asked for: ${quantity.device_shank_to_vertical}; the ankle stops at ${quantity.usable_range}", "The lean in the shoe as it is: ${limb.shank_to_vertical_shod}", "The knee in midstance: ${limb.gait_midstance_knee}"]
}

clinician_decides "heel_raise" {
  because  = "The raise that the lean asks for is higher than can be built or walked on."
  consider = ["The ankle stops at ${quantity.usable_range}; the shoe has ${quantity.shoe_drop}", "What range can be gained first", "A shank that leans less, or stands upright, with the raise found on blocks"]
}

clinician_decides "heel_raise_place" {
  because  = "No published comparison of the places was found; a shallow and a deep shoe and a high raise settle it by practice."
  consider = ["Height wanted: ${quantity.heel_raise_wanted}; depth of the shoe: ${limb.shoe_depth}", "A raise in the foot shell can't be changed; one inside or under the shoe can be tuned", "Whether all shoes get it"]
}

clinician_decides "heel_raise_opposite" {
  because  = "With a device on both legs the sides are levelled against each other, standing in both. Where no raise is given for this side, the other waits for it."
  consider = ["Blocks that level the pelvis: here ${limb.pelvis_levelling_block}, other side ${other.pelvis_levelling_block}", "Clearance in swing on this side: ${limb.gait_swing_clearance}"]
}

clinician_decides "heel_raise_opposite_place" {
  because  = "With a device on both legs the sides are levelled against each other, standing in both. Where no raise is given for this side, the other waits for it."
  consider = ["A whole sole lifts the leg by its height; a heel alone by about seven tenths, and it leans the shank"]
}

# Stiffness

clinician_decides "strut_stiffness" {
  because = "With tone or equinus, and for a calf that still lifts the heel, no published figure or formula gives the stiffness."
  consider = [
    "Tone ${limb.plantarflexor_tone} and the moment that holds the foot, ${limb.plantarflexor_resistance}: the strut has to be stiffer than that over a few degrees",
    "Heel rises: ${limb.heel_rises}; body mass ${person.body_mass}; activity ${person.activity_demand}",
    "What trials tried: 2.8 to 6.6 N·m/° in calf weakness; devices on the market have 0.58 to 3.66",
    "Simulated, the best stiffness rises with weakness, mass and speed, and with a slacker calf",
    "A figure without its bench is uncertain by 27 to 62 %",
  ]
}

clinician_decides "strut_place" {
  because = "No published comparison of places was found."
  consider = [
    "Sideways: devices with a lateral strut gave at most 0.71 N·m/° against eversion, with a medial one 0.53 against inversion, and all below 0.30 in rotation: a strut alone does not hold a heel (${limb.gait_midstance_hindfoot})",
    "Skin: Achilles tendon ${limb.achilles_skin}, malleoli ${limb.malleolar_skin}, shin ${limb.anterior_shin_skin}",
    "Room in the shoe: ${limb.shoe_width_fit} in width",
  ]
}

clinician_decides "foot_plate_length" {
  because  = "Apart from a lever that has to hold the shank back, nothing published says how long the plate is."
  consider = ["Toes: ${limb.lesser_toe_position}, in standing ${limb.toe_clawing_standing}", "Toe spring of the shoe: ${limb.shoe_toe_spring}, and its sole: ${limb.shoe_sole}", "Getting up from a chair and stairs, which a long plate hinders"]
}

clinician_decides "foot_plate_stiffness" {
  because  = "Only for a shank that falls forward and a knee that goes back does a trial give the direction."
  consider = ["Push-off: ${limb.gait_preswing_push_off}", "Great toe extension: ${limb.hallux_extension}", "Skin under the forefoot: ${limb.plantar_forefoot_skin}"]
}

clinician_decides "sole_profile" {
  because  = "It is settled at the fitting, with the device in the shoe."
  consider = ["Loading: ${limb.gait_loading_foot}, knee ${limb.gait_loading_knee}", "A rocker where the plate is long and stiff; a flare where the heel tips", "The shoe as it is: ${limb.shoe_sole}, heel ${limb.shoe_heel_shape}"]
}

# Force pattern

clinician_decides "pressure_system" {
  because  = "Nothing was found that pulls, falls or hangs, so there is nothing to hold from the side."
  consider = ["Why a device is wanted at all: ${person.goals}"]
}

clinician_decides "pressure_system_frontal" {
  because  = "The heel moves under load, and how far it corrects on standing does not settle it."
  consider = ["Heel under load: ${limb.gait_midstance_hindfoot}; corrects: ${limb.hindfoot_corrects_standing}"]
}

clinician_decides "pressure_system_transverse" {
  because  = "The forefoot turns, and what corrects does not settle it."
  consider = ["Adduction corrects: ${limb.forefoot_adduction_corrects}; forefoot on standing: ${limb.forefoot_corrects_standing}"]
}

clinician_decides "shell_side" {
  because  = "Where stance needs nothing, neither side has a task: seven people with a hereditary neuropathy used less energy in an elastic device with its shell in front, which was not compared with one behind."
  consider = ["Skin: shin ${limb.anterior_shin_skin}, calf ${limb.posterior_calf_skin}", "Putting it on: ${person.hand_function}"]
}

clinician_decides "closure" {
  because  = "Between a strap and a second shell only tone, force and sensation speak; no measurement compares them."
  consider = ["Force at the shank: ${quantity.force_at_shank}; strap alone ${quantity.strap_mean_pressure}, shell ${quantity.shell_mean_pressure}", "Hands: ${person.hand_function}; help ${person.help_available}", "Swelling through the day: ${limb.fluctuating_oedema}"]
}

clinician_decides "proximal_height" {
  because  = "Without a large force no source gives the height."
  consider = ["A lever from 250 to 330 mm takes 24 % off the force", "Fibular head at ${limb.fibular_head_height}: edge and strap stay off it", "Kneeling and sitting"]
}

clinician_decides "foot_shell" {
  because  = "No measurement compares a low with a high foot shell."
  consider = ["Room in the shoe: ${limb.shoe_depth}, opening ${limb.shoe_opening}", "Tone ${limb.plantarflexor_tone}; swelling ${limb.fluctuating_oedema}", "Hands: ${person.hand_function}"]
}

clinician_decides "ankle_strap" {
  because  = "The foot is not pulled down, and no rule holds the heel with a strap from the side."
  consider = ["Whether the heel lifts in the foot shell", "Hands: ${person.hand_function}; skin over the instep ${limb.foot_dorsum_skin}"]
}

clinician_decides "padding" {
  because  = "On skin that feels and is not at risk no source says how much is lined."
  consider = ["Lining takes room in the shoe (${limb.shoe_depth}) and softens the hold", "Skin risk: ${person.skin_risk}"]
}

clinician_decides "relief" {
  because  = "No place shows that it can't bear pressure; where one does, the safety ruleset names it."
  consider = ["Heel ${limb.heel_skin}, instep ${limb.foot_dorsum_skin}, shin ${limb.anterior_shin_skin}, fibular head ${limb.fibular_head_skin}", "First metatarsal head ${limb.first_metatarsal_head_skin}, fifth ${limb.fifth_metatarsal_head_skin}", "Callus: ${limb.plantar_callus}"]
}

# Follow-up

clinician_decides "review_interval" {
  because  = "No source says when a device is first looked at again where growth, foot risk, injection, operation and cast set no limit."
  consider = ["Progression: ${person.progression}", "Skin risk: ${person.skin_risk}; help with putting on: ${person.help_available}"]
}

clinician_decides "skin_check" {
  because  = "On skin that feels, is intact and is not at risk no source says how often it is looked at."
  consider = ["Whether the person can look at all of the foot and leg: ${person.skin_check_possible}"]
}

# Walking, phase by phase, without the device where that is safe, else in the present device; say which in the
# remarks. From the side and from behind, three passes each, or slowed video. One word a question.

measure "gait_seen_in" {
  of          = "limb"
  label       = "Walking was seen in"
  one_of      = ["barefoot", "shoe", "present_device"]
  taken       = "walking"
  error_basis = "a record of what was done, not a measurement"
  how         = "How the person walked for the observations below."
}

# Initial contact and loading

measure "gait_initial_contact" {
  of          = "limb"
  label       = "Initial contact"
  one_of      = ["heel", "flat_foot", "forefoot", "lateral_border", "medial_border"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "The part of the foot that touches first."
}

measure "gait_loading_foot" {
  of          = "limb"
  label       = "Loading: how the foot comes down"
  one_of      = ["controlled", "foot_slap", "toes_first", "rolls_outwards", "rolls_inwards"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From first contact to the whole foot on the ground."
}

measure "gait_loading_knee" {
  of          = "limb"
  label       = "Loading: knee"
  one_of      = ["yields_a_little", "stays_straight", "hyperextends", "too_flexed", "gives_way"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "A knee yields about 15 to 20 deg (from memory) as weight comes on."
}

# Midstance

measure "gait_midstance_ankle" {
  of    = "limb"
  label = "Midstance: shank over the foot"
  one_of = [
    "moves_forward_steadily", "held_back", "early_heel_rise", "too_far_forward",
    "midfoot_gives",
  ]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "With the other leg passing: held_back in equinus, too_far_forward where the calf lets the shank fall."
}

measure "gait_midstance_knee" {
  of          = "limb"
  label       = "Midstance: knee"
  one_of      = ["near_straight", "hyperextends_slowly", "snaps_back", "too_flexed", "gives_way"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From the side, other leg passing."
}

measure "gait_midstance_hindfoot" {
  of          = "limb"
  label       = "Midstance: hindfoot"
  one_of      = ["varus", "neutral", "valgus"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From behind."
}

measure "gait_midstance_hip_rotation" {
  of          = "limb"
  label       = "Midstance: turning of the thigh"
  one_of      = ["neutral", "internal", "external"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Patella against the line of walking."
}

measure "gait_midstance_pelvis" {
  of          = "limb"
  label       = "Midstance: pelvis on the other side"
  one_of      = ["level", "drops", "hitched"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From behind, other leg in the air."
}

measure "gait_midstance_heel" {
  of          = "limb"
  label       = "Midstance: heel on the ground"
  one_of      = ["down", "lateral_edge", "up"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Where the heel is when the other leg passes."
}

# Terminal stance and preswing

measure "gait_terminal_stance_heel" {
  of          = "limb"
  label       = "Terminal stance: heel rise"
  one_of      = ["on_time", "early", "late", "absent"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "On time is as the other foot is about to land."
}

measure "gait_terminal_stance_knee" {
  of          = "limb"
  label       = "Terminal stance: knee"
  one_of      = ["extends", "stays_flexed", "hyperextends"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From the side, at heel rise."
}

measure "gait_terminal_stance_hip" {
  of          = "limb"
  label       = "Terminal stance: hip"
  one_of      = ["extends", "does_not_extend"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Thigh behind the trunk at the end of the step."
}

measure "gait_preswing_push_off" {
  of          = "limb"
  label       = "Preswing: push-off"
  one_of      = ["present", "weak", "absent"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Does the ankle plantarflex while the toes are still loaded?"
}

measure "gait_preswing_knee" {
  of          = "limb"
  label       = "Preswing: knee"
  one_of      = ["bends_freely", "stiff"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "About 40 deg before the toes leave is usual (from memory)."
}

# Swing

measure "gait_swing_ankle" {
  of          = "limb"
  label       = "Swing: foot"
  one_of      = ["lifts", "hangs", "turns_in", "turns_out"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Ankle and forefoot in mid-swing."
}

measure "gait_swing_clearance" {
  of          = "limb"
  label       = "Swing: clearance"
  one_of      = ["clear", "with_compensation", "toe_catches", "toe_drags"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "By eye and by ear, at the end of the walk too."
}

measure "gait_swing_knee" {
  of          = "limb"
  label       = "Swing: knee"
  one_of      = ["bends_enough", "stiff", "bends_late", "bends_too_much"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Greatest bend in early and mid-swing."
}

measure "gait_swing_compensation" {
  of          = "limb"
  label       = "Swing: compensation"
  one_of      = ["none", "hip_hitch", "circumduction", "steppage", "vaulting", "trunk_lean"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "The strongest one."
}

measure "gait_terminal_swing_knee" {
  of          = "limb"
  label       = "Terminal swing: knee"
  one_of      = ["extends", "stays_flexed"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Just before contact."
}

measure "gait_swing_toes" {
  of          = "limb"
  label       = "Swing: toes"
  one_of      = ["relaxed", "great_toe_up", "clawed"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Through swing and as weight comes on."
}

# Figures, where video or a gait laboratory gives them. Read from the side at right angles to the walkway; the
# mean of three steps. Video that is not square to the limb misleads: then leave them out.

measure "gait_peak_dorsiflexion" {
  of          = "limb"
  label       = "Greatest dorsiflexion in stance"
  unit        = "deg"
  plausible   = [-60, 50]
  taken       = "walking"
  error       = 15
  error_basis = "limits of 15 deg at the ankle for video against 3D analysis in adults with cerebral palsy, besides a mean difference of 7 deg"
  cites       = ["video_angles"]
  how         = "From the side, at its greatest before the toes leave, most often just before the heel rises; shank against the sole, plantigrade is 0. Dorsiflexion positive, negative where plantigrade is not reached."
}

measure "gait_midstance_knee_flexion" {
  of          = "limb"
  label       = "Knee flexion in midstance"
  unit        = "deg"
  plausible   = [-40, 100]
  taken       = "walking"
  error       = 10
  error_basis = "limits of 10 deg at the knee for video against 3D analysis in adults with cerebral palsy, besides a mean difference of 5 deg"
  cites       = ["video_angles"]
  how         = "From the side, as the other foot passes; thigh against shank. Flexion positive here, hyperextension negative, straight is 0."
}

measure "gait_swing_plantarflexion" {
  of          = "limb"
  label       = "Plantarflexion in mid-swing"
  unit        = "deg"
  plausible   = [-30, 80]
  taken       = "walking"
  error       = 15
  error_basis = "limits of 15 deg at the ankle for video against 3D analysis in adults with cerebral palsy, besides a mean difference of 7 deg"
  cites       = ["video_angles"]
  how         = "From the side, as the foot passes the other leg; shank against the sole. Plantarflexion counts positive here; 0 where plantigrade is held, negative above it."
}

measure "toe_clearance" {
  of          = "limb"
  label       = "Least toe clearance in mid-swing"
  unit        = "mm"
  plausible   = [0, 120]
  taken       = "walking"
  error_basis = "none is published that we know of; between healthy people the standard deviation is 5 mm"
  cites       = ["toe_clearance_range"]
  how         = "From the side, camera at floor height, a scale in the plane of the foot; least gap between floor and toe, or tip of the shoe, in mid-swing. 0 where the toe touches."
}

# Trunk, progression, whole pattern

measure "gait_trunk_sagittal" {
  of          = "limb"
  label       = "Trunk from the side"
  one_of      = ["upright", "leans_forward", "leans_back"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "In stance on this limb."
}

measure "gait_trunk_frontal" {
  of          = "limb"
  label       = "Trunk from behind"
  one_of      = ["upright", "leans_to_this_side", "leans_away"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "In stance on this limb."
}

measure "gait_foot_progression" {
  of          = "limb"
  label       = "Foot progression"
  one_of      = ["usual", "in_toeing", "out_toeing_marked"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Foot against the line of walking; usual is straight to about 20 deg out (from memory)."
}

measure "gait_step_length" {
  of          = "limb"
  label       = "Step length of this limb"
  one_of      = ["equal", "shorter", "longer"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Against the other."
}

measure "gait_base_width" {
  of          = "limb"
  label       = "Width of the step"
  one_of      = ["usual", "narrow", "crossing", "wide"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "From behind."
}

measure "gait_fatigue" {
  of          = "limb"
  label       = "What changes with tiring"
  one_of      = ["nothing", "clearance", "knee_control", "ankle_control", "everything"]
  taken       = "walking"
  error_basis = "none is published for this observation that we know of; joint angles judged from video differ from 3D analysis by limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"
  cites       = ["visual_gait_items", "video_angles"]
  how         = "Compare the last minute of a longer walk with the first."
}

measure "gait_pattern" {
  of    = "limb"
  label = "Sagittal gait pattern of this limb"
  one_of = [
    "no_label", "drop_foot", "drop_foot_with_tight_calf", "true_equinus", "jump",
    "apparent_equinus", "crouch", "stiff_knee", "recurvatum",
  ]
  taken       = "walking"
  error_basis = "none is published that we know of; pattern labels are weakly reliable when used to choose an orthosis; the change that matters in the total of the visual gait score, 2.4 points, says nothing of one observation"
  cites       = ["sagittal_patterns", "winters_1987", "visual_gait_items"]
  how         = "Only a label for what was seen above. drop_foot to crouch as published for cerebral palsy and hemiplegia; the last two are descriptive."
}

measure "gait_remarks" {
  of    = "limb"
  label = "Remarks on walking"
  text  = true
  taken = "walking"
  how   = "What the words above do not hold: device and aid used, pain, the best and worst stretch."
}

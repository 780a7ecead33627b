# What is held, from where, and how stiffly.

rule "stop_dorsiflexion" {
  when     = "limb.plantarflexor_power <= muscle_power('4') || finding.shank_falls_forward"
  unless   = "finding.duchenne_walker"
  because  = "Plantarflexors of ${limb.plantarflexor_power}, shank ${limb.gait_midstance_ankle}: dorsiflexion is stopped, by a joint with a stop or by a device without a joint. Teaching, not a trial; nothing was read on a stop in Duchenne dystrophy while the person walks alone."
  strength = "conditional"
  basis    = "published"
  cites    = ["ankle_control_teaching"]

  advise "articulation" { favour = ["none", "dorsiflexion_stop"] }
}

rule "shell_in_front_of_the_shank" {
  when     = "finding.calf_weak && finding.shank_falls_forward"
  because  = "The calf is weak and the shank comes too far forward: a shell in front of it holds it back, against heel and forefoot. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "shell_side" { favour = "anterior" }
  advise "pressure_system" { favour = "against_shank_advance" }
}

# How stiff: the habit of going by body mass, and what was measured against it. Both stand, so the result is a range.

rule "stiffness_by_body_mass" {
  when     = "finding.spring_suits && finding.no_heel_rise"
  because  = "A common habit takes the stiffness from body mass. For ${person.body_mass}, and a calf that can't do one heel rise, a healthy ankle gives ${quantity.stiffness_by_mass}; that figure is worked out from the gait of healthy people, and differs by about a fifth between them."
  strength = "conditional"
  basis    = "common_practice"

  advise "strut_stiffness" { aim = "quantity.stiffness_by_mass" }
}

rule "softer_than_by_body_mass" {
  when     = "finding.spring_suits && finding.no_heel_rise"
  because  = "Where the best stiffness was measured, what had been recommended by mass and activity was on average 1.2 N·m/° too stiff, and right in 8 of 34. Taken from the figure by mass that leaves ${quantity.softer_stiffness}; the trial compared with another recommendation, so this shows the direction, not the number."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["waterval_2021"]

  advise "strut_stiffness" { aim = "quantity.softer_stiffness" }
}

clinician_decides "strut_stiffness" {
  because = "The best stiffness differs from person to person and is found by trying. For a calf that still lifts the heel, a knee that is too weak, or a child, no figure to begin from was found."
  consider = [
    "Two or three stiffnesses tried in walking, softest first",
    "Body mass ${person.body_mass}, activity ${person.activity_demand}, heel rises ${limb.heel_rises}",
    "The bench on which a stated stiffness was measured: benches differ by a quarter and more",
  ]
}

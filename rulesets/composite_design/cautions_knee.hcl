# The knee above the device: what a held ankle and a shell in front ask of it.

caution "weak_quadriceps_in_a_lean" {
  level = "precaution"
  when  = "finding.weak_quadriceps && finding.ankle_is_held"
  says  = "Quadriceps of ${limb.quadriceps_power}: a held ankle bends the knee as weight comes on (measured after stroke), and the more so the higher the heel. The grade is a starting value without a source."
  act   = "Less lean, a soft or bevelled heel, and the first steps with support at hand."
  basis = "published"
  cites = ["mulroy_2010", "kerkum_thesis"]
}

caution "knee_held_by_going_back" {
  level = "precaution"
  when  = "finding.weak_quadriceps && finding.knee_goes_back"
  says  = "The knee goes back (${limb.gait_midstance_knee}) and the quadriceps are ${limb.quadriceps_power}: going back may be all that keeps this knee from giving way. So the rule that a knee like this leans by no less than ${quantity.starting_lean} does not hold here. Common practice; after stroke a case series took an ankle joint adjustable both ways for such a knee."
  act   = "Bring the shank forward in small steps, with support at hand, and stop where the knee is no longer safe; think of a device over the knee."
  basis = "common_practice"
  cites = ["appasamy_2015"]
}

caution "knee_beyond_an_ankle_device" {
  level = "precaution"
  when  = "limb.quadriceps_power < muscle_power('3') && limb.hip_extensor_power < muscle_power('3')"
  says  = "Neither quadriceps (${limb.quadriceps_power}) nor hip extensors (${limb.hip_extensor_power}) reach grade 3, the full range against gravity: a device at the ankle may not keep this knee from giving way. Common practice, no source; the grades are starting values."
  act   = "Before the cast, try whether a held ankle makes the knee safe. If it doesn't, a device over the knee is what is usually given."
  basis = "common_practice"
}

# A shell in front works by the reaction of the ground: it straightens only a knee that can straighten.

caution "contracture_under_an_anterior_shell" {
  level = "precaution"
  when  = "finding.shank_falls_forward && (limb.knee_extension <= deg(-15) || limb.hip_extension <= deg(-15))"
  says  = "Two sides, at knee extension ${limb.knee_extension}, hip extension ${limb.hip_extension}: one study of children (n = 27) ruled a device with its shell in front out from 15 deg of contracture, a limit from memory; another (n = 22) found contracture no reason against it, and one person with 20 deg at both knees gained."
  act   = "Ask what range can be gained first. If it is tried, measure knee extension in walking with and without it, and look at the shin early."
  basis = "from_memory"
  cites = ["rogozinski_2009", "floor_reaction_response", "contracted_knees_case"]
}

caution "knee_beyond_reports" {
  level = "contraindication"
  when  = "finding.shank_falls_forward && limb.knee_extension < deg(-20)"
  says  = "Knee extension ${limb.knee_extension}: nothing that was read reports a device with its shell in front on a knee contracted by more than 20 deg."
  act   = "Surgical opinion before the cast."
  basis = "common_practice"
  cites = ["contracted_knees_case"]
}

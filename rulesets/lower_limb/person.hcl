# The person: recorded once, mostly by asking.

# Body and condition

measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  taken       = "person"
  error_basis = "counted from the date of birth, no measurement error"
  how         = "On the day of the assessment, from the date of birth; months as a part of a year for a young child."
}

measure "sex" {
  of          = "person"
  label       = "Sex"
  one_of      = ["female", "male", "other"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "As the person states it; used only where published normal values differ."
}

measure "height" {
  of          = "person"
  label       = "Height"
  unit        = "cm"
  plausible   = [50, 220]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "Standing against a wall without shoes; where standing is not possible, say so and use arm span or a recent record."
}

measure "body_mass" {
  of          = "person"
  label       = "Body mass"
  unit        = "kg"
  plausible   = [5, 250]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "On a scale in indoor clothes without shoes or device; note a recent change."
}

measure "diagnosis_group" {
  of    = "person"
  label = "Diagnosis group"
  one_of = [
    "stroke", "brain_injury", "cerebral_palsy", "multiple_sclerosis", "spinal_cord_lesion",
    "spina_bifida", "parkinsonism", "hereditary_neuropathy", "diabetic_neuropathy",
    "other_neuropathy", "nerve_injury", "polio", "muscle_disease", "motor_neurone_disease",
    "arthritis", "trauma_or_surgery", "idiopathic_toe_walking", "other",
  ]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "The condition that the orthosis is for; the wording of the referral goes into the free text."
}

measure "diagnosis_text" {
  of    = "person"
  label = "Diagnosis and history"
  text  = true
  taken = "person"
  how   = "The diagnosis in the words of the referral, side, severity, other illness."
}

measure "progression" {
  of          = "person"
  label       = "Course of the condition"
  one_of      = ["recovering", "stable", "relapsing", "progressive"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "What is known of the course over the last six months and expected for the next."
}

measure "duchenne_dystrophy" {
  of          = "person"
  label       = "Duchenne muscular dystrophy"
  yes_no      = true
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "From the record, where the condition is a muscle disease; what was published on orthoses differs from other muscle diseases."
}

measure "distribution" {
  of          = "person"
  label       = "Where the condition is in the body"
  one_of      = ["one_side", "both_legs", "all_four_limbs"]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "one_side: arm and leg of one side, or one leg alone; both_legs: legs more than arms."
}

measure "onset" {
  of    = "person"
  label = "Onset of the condition"
  date  = true
  taken = "person"
  how   = "The day of the event, or the date of diagnosis."
}

measure "involuntary_movement" {
  of          = "person"
  label       = "Dystonia or other involuntary movement"
  one_of      = ["none", "mild", "marked"]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "Watch at rest, on effort and while talking; marked where it moves the foot within a device."
}

measure "medicine_for_tone" {
  of          = "person"
  label       = "Medicine for tone"
  one_of      = ["none", "oral", "intrathecal_pump"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "Ask for the medicine list; tone is examined at the usual time after the dose."
}

measure "last_injection" {
  of    = "person"
  label = "Last injection for tone"
  date  = true
  never = true
  taken = "person"
  cites = ["kerkum_2013"]
  how   = "Date of the last toxin or phenol injection into the lower limb; which muscles goes into the history. Where there never was one, write never."
}

measure "last_surgery" {
  of    = "person"
  label = "Last surgery of the lower limb"
  date  = true
  never = true
  taken = "person"
  cites = ["kerkum_2013"]
  how   = "Date of the last operation that bears on the lower limb; which one goes into the history. Where there never was one, write never."
}

measure "last_serial_cast" {
  of    = "person"
  label = "Last serial cast"
  date  = true
  never = true
  taken = "person"
  how   = "Date on which the last serial cast came off. Where there never was one, write never."
}

# Aims and daily life

measure "goals" {
  of    = "person"
  label = "Goals in the person's own words"
  text  = true
  taken = "person"
  cites = ["iso_8551"]
  how   = "What the person wants to do with the device, in their words."
}

measure "main_goal" {
  of    = "person"
  label = "Main goal of the device"
  one_of = [
    "walking_speed", "mobility", "balance", "endurance", "quality_of_life", "muscle_activation",
    "gait_appearance", "lower_tone", "keep_range", "comfort", "other",
  ]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  cites       = ["iso_8551"]
  how         = "The one goal that counts most, agreed with the person; mobility is getting about: transfers, stairs, turning."
}

measure "activity_demand" {
  of          = "person"
  label       = "Activity that the device must bear"
  one_of      = ["low", "moderate", "high"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "Low: mostly sitting, indoors; moderate: walks outdoors daily; high: work on the feet, running, load carrying."
}

measure "walking_terrain" {
  of          = "person"
  label       = "Ground that the person walks on"
  one_of      = ["indoors", "level_outdoors", "uneven_outdoors"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  cites       = ["iso_8551"]
  how         = "The hardest ground that is walked on in a usual week, with the usual aid and help."
}

measure "present_device" {
  of    = "limb"
  label = "Device worn on this limb until now"
  one_of = [
    "none", "insole", "footwear", "soft_support", "posterior_leaf_spring", "composite",
    "articulated", "rigid", "anterior_shell_ground_reaction", "knee_ankle_foot",
    "functional_stimulation",
  ]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "The device that is worn now, by its description."
}

measure "present_device_remarks" {
  of    = "limb"
  label = "What is good and bad in the present device"
  text  = true
  taken = "person"
  how   = "Wear time, comfort, marks on the skin, what broke, what the person would keep."
}

measure "driving" {
  of          = "person"
  label       = "Driving"
  one_of      = ["does_not_drive", "automatic", "manual", "adapted_controls"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "The controls of the vehicle driven now, or to be driven again."
}

# Walking class and falls

measure "functional_ambulation" {
  of          = "person"
  label       = "Functional Ambulation Category (0 to 5)"
  scale       = "functional_ambulation"
  taken       = "walking"
  error       = 1
  error_basis = "our default of one grade; kappa 0.36; no standard error is published"
  cites       = ["holden_1984", "ninds_ambulation", "collen_1990"]
  how         = "Coded 0 to 5: 0 cannot walk or needs more than one helper, 1 steady contact, 2 light touch, 3 supervision, 4 alone on level ground, 5 alone anywhere. A record coded 1 to 6 is one higher."
}

measure "gross_motor_function" {
  of          = "person"
  label       = "Gross motor function level"
  scale       = "gross_motor_function"
  taken       = "person"
  error_basis = "none is published that we know of"
  cites       = ["gross_motor_levels"]
  how         = "For children and young people with cerebral palsy, from what the child usually does, not the best that is possible."
}

measure "community_walking" {
  of          = "person"
  label       = "Walking class in daily life"
  scale       = "community_walking"
  taken       = "person"
  error_basis = "none is published that we know of"
  cites       = ["perry_1995"]
  how         = "By what is reported of an ordinary week. The class by speed is worked out from the walking speed and may differ."
}

measure "walking_speed" {
  of          = "person"
  label       = "Comfortable walking speed"
  unit        = "m/s"
  plausible   = [0, 2.5]
  taken       = "walking"
  error       = 0.15
  error_basis = "above 0.8 m/s: the larger published smallest real change, 0.21 m/s, divided by the square root of 2; taken for every speed, because it is the largest: between 0.4 and 0.8 m/s 0.11, below 0.4 m/s 0.07"
  cites       = ["hosoi_2023", "speed_change_stroke"]
  how         = "Over 10 m at a comfortable pace with a moving start, usual aid and present device; the mean of two trials. Note which."
}

measure "timed_up_and_go" {
  of          = "person"
  label       = "Timed Up and Go"
  unit        = "s"
  plausible   = [3, 300]
  taken       = "walking"
  error       = 0.8
  error_basis = "the larger smallest real change, 1.14 s between raters, divided by the square root of 2, from people with knee osteoarthritis; larger after stroke"
  cites       = ["timed_walk_knee"]
  how         = "From a chair with arms, 3 m out and back at a comfortable pace, usual aid and present device."
}

measure "walking_aid" {
  of    = "person"
  label = "Walking aid"
  one_of = [
    "none", "one_stick", "two_sticks", "crutches", "frame", "rollator", "parallel_bars",
    "wheelchair",
  ]
  taken       = "walking"
  error_basis = "a record of what is known, not a measurement"
  how         = "The aid used for most of the walking."
}

measure "falls_last_year" {
  of          = "person"
  label       = "Falls in the last 12 months"
  count       = true
  plausible   = [0, 365]
  taken       = "person"
  error_basis = "none is published that we know of; falls are under-reported from memory"
  how         = "Ask for every coming to the ground that was not meant, and check with whoever lives with the person."
}

measure "standing_balance" {
  of          = "person"
  label       = "Standing balance"
  one_of      = ["unable", "with_support", "eyes_open", "eyes_closed"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Feet side by side for 30 s without shoes; the hardest of these that succeeds."
}

# Putting the device on and looking after it

measure "hand_function" {
  of          = "person"
  label       = "Hands for putting the device on"
  one_of      = ["both_hands", "one_hand", "weak_grip", "none"]
  taken       = "person"
  error_basis = "none is published that we know of"
  cites       = ["iso_8551"]
  how         = "Let the person open and close a strap and pull on a shoe; weak_grip where both hands reach but neither can pull."
}

measure "help_available" {
  of          = "person"
  label       = "Help with putting the device on"
  one_of      = ["none", "sometimes", "each_time"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "Who helps, and at the times at which the device goes on and off."
}

measure "skin_check_possible" {
  of          = "person"
  label       = "Skin can be checked daily"
  yes_no      = true
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "Whether the person, or someone with them, can see all of the foot and leg each day and will say what they see."
}

measure "follows_instructions" {
  of          = "person"
  label       = "Can follow and keep instructions"
  one_of      = ["alone", "with_reminders", "no"]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "Explain one step of putting on the device and ask for it back after some minutes."
}

# Health that bears on skin and circulation

measure "diabetes" {
  of          = "person"
  label       = "Diabetes"
  one_of      = ["none", "type_1", "type_2", "other_type"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "From the record."
}

measure "arterial_disease" {
  of          = "person"
  label       = "Peripheral arterial disease"
  one_of      = ["none_known", "suspected", "confirmed"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "From the record and from pulses and pressures; confirmed where a vascular service has said so."
}

measure "venous_disease" {
  of          = "person"
  label       = "Venous or lymphatic disease"
  one_of      = ["none_known", "varicose", "previous_thrombosis", "lymphoedema", "recent_thrombosis"]
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "From the record; recent means within three months."
}

measure "kidney_failure" {
  of          = "person"
  label       = "End-stage kidney disease"
  yes_no      = true
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  cites       = ["schaper_2020"]
  how         = "From the record; it counts in the foot risk category."
}

measure "skin_risk" {
  of          = "person"
  label       = "Skin risk overall"
  one_of      = ["low", "raised", "high"]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "Raised by thin or steroid-treated skin, poor nutrition, incontinence; high where skin broke under a device or shoe before."
}

measure "low_bone_density" {
  of          = "person"
  label       = "Low bone density or fragility fracture"
  yes_no      = true
  taken       = "person"
  error_basis = "a record of what is known, not a measurement"
  how         = "From the record."
}

measure "material_allergy" {
  of    = "person"
  label = "Allergy to materials"
  text  = true
  taken = "person"
  how   = "Known reactions to linings, adhesives, metals, dyes."
}

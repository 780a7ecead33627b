# The vocabulary of this package's tests: every kind of measure and of choice, with short names.
vocabulary "small" {
  title   = "Small vocabulary for tests"
  version = "1.0.0"
}

scale "tone_scale" {
  grades = ["0", "1", "1+", "2", "3", "4"]
}

measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  taken       = "person"
  error_basis = "None is published."
}

measure "mass" {
  of          = "person"
  label       = "Body mass"
  unit        = "kg"
  plausible   = [0, 300]
  taken       = "person"
  error_basis = "None is published."
}

measure "driver" {
  of          = "person"
  label       = "Drives"
  yes_no      = true
  taken       = "person"
  error_basis = "None is published."
}

measure "work" {
  of          = "person"
  label       = "Work"
  one_of      = ["desk", "standing", "field"]
  taken       = "person"
  error_basis = "None is published."
}

measure "injected" {
  of    = "person"
  label = "Last injection"
  date  = true
  never = true
  taken = "person"
}

measure "remark" {
  of    = "person"
  label = "Remark"
  text  = true
  taken = "person"
}

measure "flex" {
  of          = "limb"
  label       = "Dorsiflexion"
  unit        = "deg"
  plausible   = [-60, 45]
  taken       = "lying"
  error       = 5
  error_basis = "From memory, for these tests."
}

measure "knee" {
  of          = "limb"
  label       = "Knee extension"
  unit        = "deg"
  plausible   = [-90, 20]
  taken       = "lying"
  error       = 5
  error_basis = "From memory, for these tests."
}

measure "gap" {
  of          = "limb"
  label       = "Gap"
  unit        = "mm"
  plausible   = [0, 100]
  taken       = "standing"
  error_basis = "None is published."
}

measure "lift" {
  of          = "limb"
  label       = "Lift"
  unit        = "mm"
  plausible   = [0, 100]
  taken       = "standing"
  error_basis = "None is published."
}

measure "tone" {
  of          = "limb"
  label       = "Tone"
  scale       = "tone_scale"
  taken       = "lying"
  error       = 1
  error_basis = "From memory, for these tests."
}

measure "skin" {
  of          = "limb"
  label       = "Skin"
  one_of      = ["intact", "fragile", "broken"]
  taken       = "lying"
  error_basis = "None is published."
}

measure "posture" {
  of          = "limb"
  label       = "Foot posture"
  count       = true
  plausible   = [-12, 12]
  taken       = "standing"
  error_basis = "None is published."
}

measure "p" {
  of          = "limb"
  label       = "Sign P"
  yes_no      = true
  taken       = "lying"
  error_basis = "None is published."
}

measure "q" {
  of          = "limb"
  label       = "Sign Q"
  yes_no      = true
  taken       = "standing"
  error_basis = "None is published."
}

measure "r" {
  of          = "limb"
  label       = "Sign R"
  yes_no      = true
  taken       = "walking"
  error_basis = "None is published."
}

measure "s" {
  of          = "limb"
  label       = "Sign S"
  yes_no      = true
  taken       = "walking"
  error_basis = "None is published."
}

choice "trim" {
  label    = "Trim-line"
  concerns = "device"
  options  = ["low", "middle", "high"]
  ordered  = true
}

choice "closure" {
  label    = "Closure"
  concerns = "device"
  options  = ["strap", "shell", "wrap"]
}

choice "pad" {
  label    = "Padding"
  concerns = "device"
  options  = ["none", "soft"]
  default  = "none"
}

choice "height" {
  label    = "Block height"
  concerns = "alignment"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
}

choice "angle" {
  label    = "Ankle angle"
  concerns = "alignment"
  unit     = "deg"
  between  = [-10, 10]
  rounding = 2
  default  = 0
}

choice "review" {
  of       = "person"
  label    = "Review interval"
  concerns = "follow_up"
  unit     = "wk"
  between  = [1, 52]
  rounding = 1
}

choice "shoe" {
  of       = "person"
  label    = "Shoe"
  concerns = "follow_up"
  options  = ["own", "deep", "made"]
  ordered  = true
}

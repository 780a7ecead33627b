# One measure of each kind, at every stage of an examination.

vocabulary "small_vocabulary" {
  title   = "A small vocabulary"
  version = "1.2.0"
}

scale "power" {
  grades = ["0", "1", "2-", "2"]
}

scale "distance" {
  grades = ["none", "household", "community"]
}

measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  taken       = "person"
  error_basis = "counted, not measured"
}

measure "falls" {
  of          = "person"
  label       = "Falls in a year"
  count       = true
  plausible   = [0, 365]
  taken       = "person"
  error_basis = "none is published"
  how         = "Ask for every fall, also without injury."
}

measure "injected" {
  of    = "person"
  label = "Last injection"
  date  = true
  never = true
  taken = "person"
}

measure "walking_class" {
  of          = "person"
  label       = "Walking class"
  scale       = "distance"
  taken       = "walking"
  error_basis = "a record, not a measurement"
}

measure "dorsiflexion" {
  of          = "limb"
  label       = "Dorsiflexion, <knee extended>"
  unit        = "deg"
  plausible   = [-60, 45]
  taken       = "lying"
  how         = "Supine, hindfoot held \"square\"."
  error       = 5
  error_basis = "two assessors"
}

measure "calf_power" {
  of          = "limb"
  label       = "Calf power"
  scale       = "power"
  taken       = "lying"
  error       = 1
  error_basis = "a default"
}

measure "pressure_index" {
  of          = "limb"
  label       = "Pressure index"
  unit        = "1"
  plausible   = [0.1, 1.6]
  taken       = "lying"
  error       = 0.1
  error_basis = "a default"
}

measure "heel_down" {
  of          = "limb"
  label       = "Heel down"
  yes_no      = true
  taken       = "standing"
  error_basis = "none is published"
}

measure "skin" {
  of          = "limb"
  label       = "Skin"
  one_of      = ["intact", "red_after_pressure", "broken"]
  taken       = "shoe"
  error_basis = "none is published"
}

measure "date" {
  of          = "limb"
  label       = "A measure with the name of a field"
  unit        = "mm"
  plausible   = [0, 60]
  error_basis = "none is published"
}

measure "remarks" {
  of    = "limb"
  label = "Remarks"
  text  = true
}

measure "unread" {
  of          = "limb"
  label       = "Read by no rule"
  yes_no      = true
  taken       = "standing"
  error_basis = "none is published"
}

choice "closure" {
  label    = "Closure"
  concerns = "device"
  options  = ["strap", "shell"]
}

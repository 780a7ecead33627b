# The lower-limb vocabulary: what a full assessment for a lower-limb orthosis records, and what can
# be advised of the device. Each file has one subject; the order of files and blocks never matters.

vocabulary "lower_limb" {
  title   = "Lower-limb orthotic assessment"
  version = "1.1.1"
}

# Scales: grades in order, the first the lowest. A grade is a label, never a number: papers that recode
# the Modified Ashworth scale 0 to 5 write 2 for the grade 1+.

scale "modified_ashworth" {
  title  = "Modified Ashworth scale"
  grades = ["0", "1", "1+", "2", "3", "4"]
  cites  = ["bohannon_1987"]
}

scale "tardieu_quality" {
  title  = "Tardieu scale, quality of the muscle reaction"
  grades = ["0", "1", "2", "3", "4", "5"]
  cites  = ["barnes_2008"]
}

scale "muscle_power" {
  title  = "Muscle power, Medical Research Council grades with plus and minus"
  grades = ["0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"]
  cites  = ["mrc_1976", "muscle_test_grades"]
}

scale "fpi_item" {
  title  = "Foot Posture Index, one item: supinated negative, pronated positive"
  grades = ["-2", "-1", "0", "+1", "+2"]
  cites  = ["redmond_2005"]
}

scale "functional_ambulation" {
  title  = "Functional Ambulation Category, coded 0 to 5"
  grades = ["0", "1", "2", "3", "4", "5"]
  cites  = ["holden_1984", "ninds_ambulation"]
}

scale "gross_motor_function" {
  title  = "Gross motor function level in cerebral palsy: I walks without limitation, V is transported"
  grades = ["I", "II", "III", "IV", "V"]
  cites  = ["gross_motor_levels"]
}

scale "community_walking" {
  title  = "Walking class by what the person does in daily life"
  grades = ["none", "household", "limited_community", "community"]
  cites  = ["perry_1995"]
}

scale "iwgdf_risk" {
  title  = "Foot risk category of the diabetic foot working group, as the foot service recorded it"
  grades = ["0", "1", "2", "3"]
  cites  = ["schaper_2020"]
}

scale "pitting_oedema" {
  title  = "Depth of pitting: 1+ about 2 mm, 2+ 3 to 4 mm, 3+ 5 to 6 mm, 4+ 8 mm or more"
  grades = ["0", "1+", "2+", "3+", "4+"]
  cites  = ["pitting_depths"]
}

# What formulas read off a measurement. Where one of these bands has its edge is said with the formula.

scale "foot_posture" {
  title  = "Foot posture by the total of the Foot Posture Index"
  grades = ["highly_supinated", "supinated", "neutral", "pronated", "highly_pronated"]
  cites  = ["redmond_2006"]
}

scale "pressure_index" {
  title  = "Ankle brachial pressure index by severity; raised is above the normal band, where the vessels may not compress"
  grades = ["critical", "severe", "moderate", "mild", "borderline", "normal", "raised"]
  cites  = ["pressure_index_2020", "limb_ischaemia_bands"]
}

scale "short_calf" {
  title  = "What is short in the calf, by dorsiflexion with the knee extended and flexed"
  grades = ["none", "gastrocnemius", "gastrocnemius_and_soleus"]
  cites  = ["baumbach_2014"]
}

# A foot that drops in swing while tone is low or normal: the lightest device that lifts it, what it must resist, and what
# makes the drop foot more than a drop foot.

ruleset "flaccid_drop_foot_afo" {
  title      = "Drop foot with low or normal tone"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says which light device suits a foot that only fails to lift, how much it has to resist, and when something else is wrong with the leg. It does not design the device."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.diagnosis_group in ['nerve_injury', 'other_neuropathy', 'diabetic_neuropathy', 'polio', 'muscle_disease', 'motor_neurone_disease', 'trauma_or_surgery', 'spinal_cord_lesion', 'multiple_sclerosis', 'stroke', 'brain_injury'] && person.walking_aid != 'wheelchair'"
  builds_on  = ["limb_safety@1"]
}

citation "ankle_control_teaching" {
  text     = "Stepwise teaching algorithm for ankle-foot orthoses, as given in an examination forum for neurological physiotherapists (reply 489033)"
  url      = "https://rehabknowledge.com/forums/reply/489033/"
  standing = "second_hand"
}

citation "peroneal_palsy_teaching" {
  text     = "Device for an isolated peroneal palsy, as given in an examination forum for neurological physiotherapists (reply 490033)"
  url      = "https://rehabknowledge.com/forums/reply/490033/"
  standing = "second_hand"
}

citation "foot_drop_wiki" {
  text     = "Open wiki on foot drop (opening): recovery of a peroneal palsy, examination of passive dorsiflexion"
  url      = "https://www.physio-pedia.com/index.php?title=Foot_drop&oldid=270541"
  standing = "second_hand"
}

citation "stroke_statement_2009" {
  text     = "NHS Quality Improvement Scotland 2009, best practice statement on ankle-foot orthoses after stroke; cover and contents read, the advice from memory"
  url      = "http://strathprints.strath.ac.uk/16846/"
  standing = "from_memory"
}

citation "sheffler_2008" {
  text     = "Sheffler 2008, Am J Phys Med Rehabil 87:26: multiple sclerosis with weak dorsiflexors and evertors, timed tasks with and without a device, n = 15 (abstract)"
  url      = "https://journals.lww.com/ajpmr/Abstract/2008/01000/Functional_Effect_of_an_Ankle_Foot_Orthosis_on.5.aspx"
  standing = "read"
}

citation "kobayashi_2017" {
  text     = "Kobayashi 2017: resistance to plantarflexion, in an articulated device after stroke, that kept the ankle dorsiflexed and the knee flexed through the step: 0.029 (SD 0.011) to 0.062 (SD 0.019) N.m/kg (abstract)"
  url      = "https://scholars.uky.edu/en/publications/contribution-of-ankle-foot-orthosis-moment-in-regulating-ankle-an"
  standing = "read"
}

citation "kelley_2007" {
  text     = "Kelley and DiBello 2007, JPO 19:109: orthotic assessment after polio; the mass of a device bears on energy (opening)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2007/10000/Orthotic_Assessment_for_Individuals_With_Postpolio.6.aspx"
  standing = "read"
}

citation "digiovanni_2002" {
  text     = "DiGiovanni 2002, J Bone Joint Surg Am 84:962: short gastrocnemius as 5 deg or less of dorsiflexion, knee extended"
  url      = "https://www.sandersclinic.net/scientific-articles/isolated-gastrocnemius-tightness/"
  standing = "read"
}

# A weak calf without spasticity, after polio, injury of a nerve, disease of a muscle or trauma: which family of device,
# how the shank is held, how stiff a spring is tried, and what sets an ankle-foot orthosis its limits.

ruleset "calf_weakness_afo" {
  title      = "Weak calf without spasticity"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says which family of device suits a weak calf without spasticity, what works against it, and where the knee needs more than an ankle-foot orthosis. It does not design the device."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.diagnosis_group in ['polio', 'nerve_injury', 'other_neuropathy', 'muscle_disease', 'trauma_or_surgery', 'spina_bifida'] && person.walking_aid != 'wheelchair'"
  builds_on  = ["limb_safety@1"]
}

# Calf weakness

citation "calf_weakness_trial" {
  text     = "BMJ Open, table 1 of a trial protocol: calf weakness as a grade below 5 or unable to do more than 3 heel rises; 18 to 80 years, no equinus on standing, no need of a device over the knee"
  url      = "https://bmjopen.bmj.com/highwire/markup/115562/expansion"
  standing = "read"
}

citation "waterval_2019" {
  text     = "Waterval 2019, J Neuroeng Rehabil 16:120: five stiffnesses from 2.8 to 6.6 N.m/deg in calf weakness without spasticity, n = 37 (abstract)"
  doi      = "10.1186/s12984-019-0600-2"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC6798503"
  standing = "read"
}

citation "waterval_2020" {
  text     = "Waterval 2020, J Rehabil Med 52(3): walking with and without the own device in calf weakness without spasticity, four types, n = 34 (abstract)"
  doi      = "10.2340/16501977-2642"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-2642"
  standing = "read"
}

citation "waterval_2021" {
  text     = "Waterval 2021, J Neuroeng Rehabil 18:97: stiffness recommended by body mass and activity matched the measured best in 8 of 34, on average 1.2 (SD 1.3) N.m/deg too stiff (abstract)"
  doi      = "10.1186/s12984-021-00890-8"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/s12984-021-00890-8"
  standing = "read"
}

citation "limb_trauma_composites" {
  text     = "Two carbon orthoses after limb trauma with weak plantarflexors, n = 23 (PMC12292513, abstract)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC12292513/"
  standing = "read"
}

citation "ankle_control_teaching" {
  text     = "Stepwise teaching algorithm for ankle-foot orthoses, as given in an examination forum for neurological physiotherapists (reply 489033)"
  url      = "https://rehabknowledge.com/forums/reply/489033/"
  standing = "second_hand"
}

citation "ground_reaction_standing" {
  text     = "Devices that replace the calf in a very weak, low-toned, loose ankle: the need is in a published table (Pract Neurol 22:311), the device in its last column was not read"
  url      = "https://pn.bmj.com/highwire/markup/149669/expansion"
  standing = "from_memory"
}

citation "heel_rise_short_scheme" {
  text     = "Open wiki on muscle testing of the plantarflexors: grade 3 for one heel rise, 4 for two or three, 5 for four or five"
  url      = "https://www.physio-pedia.com/index.php?title=Manual_Muscle_Testing:_Plantarflexion&oldid=227243"
  standing = "second_hand"
}

citation "mulroy_2010" {
  text     = "Mulroy 2010, Prosthet Orthot Int 34:277: three designs after stroke, n = 30; stops at the ankle raise knee flexion in loading (abstract)"
  url      = "https://studylib.net/doc/8758663/"
  standing = "read"
}

# Polio

citation "polio_device_use" {
  text     = "Survey of polio survivors with devices that restrict dorsiflexion: 74 % used them; users were more limited without and more satisfied (abstract)"
  url      = "https://researchinformation.amsterdamumc.org/en/publications/use-and-usability-of-custom-made-dorsiflexion-restricting-ankle-f"
  standing = "read"
}

citation "kelley_2007" {
  text     = "Kelley and DiBello 2007, JPO 19:109: orthotic assessment after polio; the mass of a device bears on energy (opening)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2007/10000/Orthotic_Assessment_for_Individuals_With_Postpolio.6.aspx"
  standing = "read"
}

citation "brehm_2007" {
  text     = "Brehm 2007, J Rehabil Med 39:651: total-contact carbon knee-ankle-foot orthosis after polio, energy cost 8 % lower, n = 20 (abstract)"
  doi      = "10.2340/16501977-0110"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-0110"
  standing = "read"
}

citation "fengler_2011" {
  text     = "Fengler and Holtslag 2011, JPO 23:199: a case of severe quadriceps weakness after polio and the line of load in front of the knee (abstract)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2011/10000/Compensating_Weakness_of_the_Quadriceps_Muscles.6.aspx"
  standing = "read"
}

# Duchenne dystrophy and spina bifida

citation "townsend_2015" {
  text     = "Townsend 2015, Pediatr Phys Ther 27:24: daytime dynamic-response orthoses in boys with Duchenne dystrophy, n = 3 (abstract)"
  url      = "https://journals.lww.com/pedpt/Fulltext/2015/27010/Effects_of_AFO_Use_on_Walking_in_Boys_With.5.aspx"
  standing = "read"
}

citation "stevens_2006" {
  text     = "Stevens 2006, JPO 18(4):111: review of lower-limb orthoses in Duchenne dystrophy; while walking often only night splints (abstract)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2006/10000/Lower_Limb_Orthotic_Management_of_Duchenne.5.aspx"
  standing = "read"
}

citation "duchenne_articulated" {
  text     = "Clin Biomech 2016, S0268-0033(16)30039-0: articulated orthosis by day in Duchenne dystrophy, n = 20 in three groups (abstract)"
  url      = "https://www.clinbiomech.com/article/S0268-0033(16)30039-0/fulltext"
  standing = "read"
}

citation "spina_bifida_review" {
  text     = "Dev Med Child Neurol 2004: review of bracing and walking in myelomeningocele (abstract)"
  url      = "https://homsy-staging.cambridgecore.org/core/journals/developmental-medicine-and-child-neurology/article/efficacy-of-bracing-the-lower-limbs-and-ambulation-training-in-children-with-myelomeningocele/062F475E8E470BD1A0A7DFE86EF8AFA5"
  standing = "read"
}

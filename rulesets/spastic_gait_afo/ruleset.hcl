# Spastic gait, in children and adults: which family of device each leg asks for by its pattern from the side, whether
# the ankle may move in it, and what comes before or instead. Each leg is judged alone.

ruleset "spastic_gait_afo" {
  title      = "Ankle-foot orthosis in spastic gait"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says which family of device suits each leg in spastic gait of children and adults, by what is seen of hip, knee and ankle and by range, tone and power; whether dorsiflexion may be free; and what goes before a device. It does not give the full design."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.diagnosis_group in ['cerebral_palsy', 'brain_injury', 'spinal_cord_lesion', 'multiple_sclerosis', 'idiopathic_toe_walking']"
  builds_on  = ["limb_safety@1"]
}

# Patterns

citation "rodda_graham_2001" {
  text     = "Rodda and Graham 2001, Eur J Neurol 8(S5):98-108: patterns in hemiplegia and diplegia and their management, mostly the authors' experience by their own word; abstract and introduction read, the advice for each pattern from memory"
  url      = "https://studylib.net/doc/10658010/"
  standing = "from_memory"
}

citation "rodda_2004" {
  text     = "Rodda 2004, J Bone Joint Surg Br 86:251-8: sagittal patterns in 187 children; the pattern changes with age (abstract)"
  url      = "https://www.scribd.com/doc/243249455/Sagital-gait-patterns-pdf"
  standing = "read"
}

citation "pattern_teaching" {
  text     = "Teaching cards on gait and orthoses in cerebral palsy (6092865): the devices for the types of hemiplegia, and one group in which the sides differ"
  url      = "https://brainscape.com/flashcards/cp-gait-orthotics-6092865/packs/9152726"
  standing = "second_hand"
}

citation "pattern_limits" {
  text     = "Open wiki page on gait patterns in cerebral palsy: patterns are seen from the side only and are weak in validity and reliability when used to choose an orthosis (opening)"
  url      = "https://physio-pedia.com/Classification_of_Gait_Patterns_in_Cerebral_Palsy"
  standing = "second_hand"
}

citation "kerkum_thesis" {
  text     = "Kerkum, thesis on stiff orthoses in cerebral palsy, page 16: five gait types, of which two hyperextend the knee and two flex it"
  url      = "https://my-thesis.info/PDF/Kerkum/files/basic-html/page16.html"
  standing = "read"
}

# Devices

citation "kerkum_protocol" {
  text     = "Kerkum 2013, BMC Pediatr 13:17: protocol of a trial of three stiffnesses of a ground-reaction device, knee-flexion gait, 6 to 14 years (abstract)"
  doi      = "10.1186/1471-2431-13-17"
  url      = "https://bmcpediatr.biomedcentral.com/articles/10.1186/1471-2431-13-17"
  standing = "read"
}

citation "rogozinski_2009" {
  text     = "Rogozinski 2009, J Bone Joint Surg Am 91:2440: ground-reaction device, n = 27; the more knee or hip is contracted, the less it gains (abstract); the limits of 10 and 15 deg stand in the conclusion and are from memory"
  url      = "http://connection.ebscohost.com/c/articles/44532503/efficacy-floor-reaction-ankle-foot-orthosis-children-cerebral-palsy"
  standing = "from_memory"
}

citation "floor_reaction_response" {
  text     = "Effect of floor reaction ankle-foot orthosis on crouch gait in patients with cerebral palsy: what can be expected? n = 22, level II to IV; contractures were no contraindication, and the foot turned out went with a better response (abstract)"
  url      = "http://www.reedoc-irr.fr/Record.htm?idlist=1&record=19473328124912915009"
  standing = "read"
}

citation "contracted_knees_case" {
  text     = "One person with both knees contracted by 20 deg in ground-reaction devices: knee flexion 20.5 to 12.3 deg, plantarflexion moment 0.70 to 1.32 N.m/kg; reported second-hand, where it was published was not noted"
  standing = "second_hand"
}

citation "owen_2014" {
  text     = "Owen 2014, teaching on when dorsiflexion may be free in an orthosis; not read"
  standing = "from_memory"
}

citation "nice_spasticity_table" {
  text     = "NICE CG145, spasticity in under 19s, full guideline, table 16: recommendations 37 to 43 on orthoses (start of the table)"
  url      = "http://www.ncbi.nlm.nih.gov/books/NBK116573/table/ch5.t16/?report=objectonly"
  standing = "read"
}

citation "nice_spasticity" {
  text     = "NICE CG145, spasticity in under 19s, further recommendations on orthoses; passage not read"
  url      = "https://nice.org.uk/guidance/cg145/chapter/recommendations"
  standing = "from_memory"
}

citation "ispo_cerebral_palsy" {
  text     = "Morris 2011, consensus on the orthotic management of cerebral palsy: trials are too short to show that an orthosis prevents deformity (abstract)"
  url      = "https://pureportal.strath.ac.uk/en/publications/orthotic-management-of-cerebral-palsy-recommendations-from-a-cons"
  standing = "read"
}

citation "carmick_2012" {
  text     = "Carmick 2012, Pediatr Phys Ther 24(4): alignment of the subtalar joint in the orthosis, four cases (abstract)"
  url      = "http://journals.lww.com/pedpt/Fulltext/2012/24040/Importance_of_Orthotic_Subtalar_Alignment_for.2.aspx"
  standing = "read"
}

# Conditions other than cerebral palsy

citation "prenton_2016" {
  text     = "Prenton 2016, J Rehabil Med 48:646: stimulation against ankle-foot orthosis for foot drop after stroke, 5 trials, 815 people, walking equal (abstract)"
  doi      = "10.2340/16501977-2136"
  url      = "https://www.medicaljournals.se/jrm/content/html/10.2340/16501977-2136"
  standing = "read"
}

citation "sclerosis_case_2018" {
  text     = "University of Iowa physical therapy case report, 2018: one man with multiple sclerosis, fast pace 0.45 m/s with an ankle-foot orthosis, 0.35 m/s with stimulation (abstract)"
  url      = "https://ir.uiowa.edu/pt_casereports/59/"
  standing = "read"
}

# Range

citation "cottalorda_2000" {
  text     = "Cottalorda 2000: serial casts in toe-walking children with cerebral palsy, n = 20, mean age 3.1 years; dorsiflexion, knee straight, from 3 (-10 to 5) to 20 deg (abstract 10855878; the author's name from memory)"
  url      = "https://www.orthobullets.com/evidence/10855878"
  standing = "read"
}

citation "lee_2011" {
  text     = "Lee 2011, Ann Rehabil Med 35(3): cast begun three weeks after an injection and changed weekly three times, n = 29; gain kept to 12 weeks, 6 without the injection; foot ulcers in 11.5 % (abstract)"
  url      = "https://e-arm.org/journal/view.php?number=6"
  standing = "read"
}

citation "maas_2012" {
  text     = "Maas 2012, BMC Pediatr 12:38, table 1: a trial of night splints gains range first where dorsiflexion, knee straight, is under 5 deg"
  url      = "http://www.biomedcentral.com/1471-2431/12/38/table/T1"
  standing = "read"
}

citation "range_cut_offs" {
  text     = "Rasmussen, congress abstract 2017, page 97: cut-offs of passive range in surveillance programmes are not evidence based and did not follow function, n = 60, level I and II"
  url      = "http://abstract.ortopaedi.dk/bulletin/2017/HTMLabstract/files/assets/basic-html/page-97.html"
  standing = "read"
}

# Toe walking without a known cause

citation "herrin_2016" {
  text     = "Herrin 2016, Prosthet Orthot Int 40:262: foot orthosis on a stiff plate against a hinged ankle-foot orthosis, randomised, n = 18 (abstract)"
  url      = "https://pubmed.ncbi.nlm.nih.gov/25628380/"
  standing = "read"
}

citation "van_kuijk_2014" {
  text     = "Van Kuijk 2014, J Rehabil Med 46(10): toe walking, systematic review (abstract)"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-1881"
  standing = "read"
}

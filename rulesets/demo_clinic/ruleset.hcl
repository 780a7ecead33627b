# The protocol of an invented outpatient orthotics clinic that makes composite ankle-foot orthoses. It shows every part
# of the language. It stays a draft: it is never to be put in force.

ruleset "demo_clinic" {
  title            = "Composite ankle-foot orthosis, outpatient clinic (demonstration)"
  version          = "1.2.0"
  status           = "draft"
  publisher        = "Demonstration clinic, invented"
  author           = ["senior orthotist", "orthotist"]
  reviewer         = ["physiotherapist", "podiatrist"]
  endorser         = ["clinical governance lead"]
  purpose          = "Shows how a clinic writes down how it settles alignment, stiffness and force pattern. For the demonstration only; not for use with patients."
  approval_date    = "2026-08-24"
  last_review_date = "2026-08-17"
  effective_period = ["2026-09-01", "2027-10-31"]
  review_by        = "2027-10-31"
  vocabulary       = "lower_limb@1"
  applies          = "person.age >= years(5) && person.walking_aid != 'wheelchair'"
  builds_on        = ["demo_safety@1"]
}

except "demo_safety.driving" {
  because = "The clinic's own caution on driving says what was measured and what to advise."
}

citation "digiovanni_2002" {
  text     = "DiGiovanni 2002, J Bone Joint Surg Am 84:962: short gastrocnemius as 5 deg or less of dorsiflexion, knee extended; the limit with the knee flexed is from memory"
  url      = "https://www.sandersclinic.net/scientific-articles/isolated-gastrocnemius-tightness/"
  standing = "read"
}

citation "mulroy_2010" {
  text     = "Mulroy 2010, Prosthet Orthot Int 34:277: three designs after stroke, n = 30; stops at the ankle raise knee flexion in loading (abstract)"
  url      = "https://studylib.net/doc/8758663/"
  standing = "read"
}

citation "appasamy_2015" {
  text     = "Appasamy 2015, PM&R 7:105-12: strategies for the knee that hyperextends after stroke, n = 22 (abstract, its last line cut)"
  url      = "https://ouci.dntb.gov.ua/en/works/lDJ6EBL7"
  standing = "read"
}

citation "waterval_2019" {
  text     = "Waterval 2019, J Neuroeng Rehabil 16:120: five stiffnesses from 2.8 to 6.6 N.m/deg in calf weakness without spasticity, n = 37 (abstract)"
  doi      = "10.1186/s12984-019-0600-2"
  url      = "https://www.x-mol.com/paperRedirect/5975780"
  standing = "read"
}

citation "waterval_2021" {
  text     = "Waterval 2021, J Neuroeng Rehabil: stiffness recommended by body mass and activity matched the measured best in 8 of 34 (abstract)"
  doi      = "10.1186/s12984-021-00890-8"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/s12984-021-00890-8"
  standing = "read"
}

citation "calf_weakness_trial" {
  text     = "BMJ Open, table 1 of a trial protocol: calf weakness as a grade below 5 or unable to do more than 3 heel rises"
  url      = "https://bmjopen.bmj.com/highwire/markup/115562/expansion"
  standing = "read"
}

citation "rogozinski_2009" {
  text     = "Rogozinski 2009, J Bone Joint Surg Am 91:2440: ground-reaction device and flexion contracture; abstract read up to its conclusion, the limits from memory"
  standing = "from_memory"
}

citation "hofmann_2015" {
  text     = "Hofmann 2015, J Rehabil Med 47(10): ankle braces slow the foot from one pedal to the other, 30 healthy drivers (abstract)"
  doi      = "10.2340/16501977-2011"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-2011"
  standing = "read"
}

citation "latz_2019" {
  text     = "Latz 2019, Foot Ankle Surg: driving took the right ankle to 22 deg of dorsiflexion and 13 deg of plantarflexion, 15 healthy drivers (abstract)"
  url      = "https://c.coek.info/pdf-doctor-when-can-i-drive-range-of-functional-ankle-motion-during-driving-.html"
  standing = "read"
}

citation "varus_strap" {
  text     = "Textbook chapter on osteotomy for the varus heel, clinicalpub.com (opening): brace with an outside strap against varus"
  url      = "https://clinicalpub.com/zosteotomy-for-varus-heel"
  standing = "read"
}

citation "baumbach_2016" {
  text     = "Baumbach 2016: dorsiflexion differs by less than 6 deg between the ankles of healthy people"
  url      = "https://link.springer.com/article/10.1007/s00402-016-2513-x"
  standing = "read"
}

citation "wear_build_up" {
  text     = "NHS leaflets on the ankle-foot orthosis: periods of 30 minutes, longer by 15 minutes (adult) or 30 minutes (child) each day"
  url      = "https://www.nth.nhs.uk/resources/ankle-foot-orthosis/"
  standing = "read"
}

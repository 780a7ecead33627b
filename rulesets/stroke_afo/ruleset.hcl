# Ankle-foot orthosis for an adult after stroke: which family of device, or which opinion first. Not the full design.

ruleset "stroke_afo" {
  title      = "Ankle-foot orthosis after stroke, adults"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says which family of device suits an adult who walks after a stroke, what comes before or instead of it, and where published advice disagrees. A starting point for a clinic's own protocol."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.age >= years(18) && person.diagnosis_group == 'stroke'"
  builds_on  = ["limb_safety@1"]
}

# Guidelines

citation "johnston_2021" {
  text     = "Johnston 2021, J Neurol Phys Ther 45:112-96: guideline on ankle-foot orthoses and functional electrical stimulation after stroke (abstract)"
  doi      = "10.1097/NPT.0000000000000347"
  url      = "https://www.nursingcenter.com/journalarticle?Article_ID=5814186&Journal_ID=4231915&Issue_ID=5813596"
  standing = "read"
}

citation "uk_stroke_guideline" {
  text     = "National Clinical Guideline for Stroke (UK and Ireland), 2016 and 2023: light, flexible device first; text not read"
  standing = "from_memory"
}

citation "best_practice_2009" {
  text     = "NHS Quality Improvement Scotland, August 2009: best practice statement on ankle-foot orthoses after stroke; cover and contents read, the advice from memory"
  url      = "https://scribd.com/document/707614625/ANKLEFOOT-BPS-AUG09"
  standing = "from_memory"
}

citation "consensus_2003" {
  text     = "ISPO consensus conference on the orthotic management of stroke, September 2003; front matter read, the advice from memory"
  url      = "https://www.scribd.com/document/707614404/consenso-ortesis"
  standing = "from_memory"
}

citation "winstein_2016" {
  text     = "Winstein 2016, American guideline on rehabilitation after stroke: resting splints; front page read, the advice from memory"
  url      = "https://ja.scribd.com/document/340700152/"
  standing = "from_memory"
}

citation "toxin_summary_2024" {
  text     = "US veterans' guideline on rehabilitation after stroke, 2024, as summarised by linksmedicus.com: weak suggestions for toxin in focal spasticity and for stimulation of muscle"
  url      = "https://www.linksmedicus.com/news/2024-va-dod-clinical-practice-guideline-for-stroke-rehabilitation/"
  standing = "second_hand"
}

# Studies

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

citation "mulroy_2010" {
  text     = "Mulroy 2010, Prosthet Orthot Int 34:277-92: three designs after stroke, n = 30, with and without a plantarflexion contracture (abstract)"
  url      = "https://studylib.net/doc/8758663/"
  standing = "read"
}

citation "appasamy_2015" {
  text     = "Appasamy 2015, PM&R 7:105-12: strategies for the knee that hyperextends in hemiparesis, n = 22 (abstract, its last line cut)"
  doi      = "10.1016/j.pmrj.2014.10.015"
  url      = "https://ouci.dntb.gov.ua/en/works/lDJ6EBL7"
  standing = "read"
}

citation "geerars_2022" {
  text     = "Geerars 2022, Gait Posture 91:137: treatment of the knee that hyperextends after stroke, 8 trials (abstract)"
  url      = "https://www.scribd.com/document/788748425/"
  standing = "read"
}

citation "requier_2018" {
  text     = "Requier 2018, J Rehabil Med 50(5): knee-ankle-foot orthoses for a knee that hyperextends painfully, 27 people (abstract)"
  doi      = "10.2340/16501977-2333"
  url      = "https://www.medicaljournals.se/jrm/content/html/10.2340/16501977-2333"
  standing = "read"
}

citation "deltombe_2017" {
  text     = "Deltombe 2017, J Rehabil Med 49(6): guidance of one interdisciplinary group on the spastic equinovarus foot after stroke (abstract)"
  doi      = "10.2340/16501977-2226"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-2226"
  standing = "read"
}

citation "equinovarus_surgery_text" {
  text     = "Orthopaedic teaching page 7054: equinovarus in the first half year after a stroke, device and therapy before surgery (opening)"
  url      = "http://orthobullets.com/TopicView.aspx?id=7054"
  standing = "second_hand"
}

citation "varus_strap" {
  text     = "Textbook chapter on osteotomy for the varus heel, clinicalpub.com (opening): brace with an outside strap against varus"
  url      = "https://clinicalpub.com/zosteotomy-for-varus-heel"
  standing = "read"
}

citation "ankle_control_teaching" {
  text     = "Stepwise teaching algorithm for ankle-foot orthoses, as given in an examination forum for neurological physiotherapists (reply 489033): a stop where dorsiflexion in stance is too much"
  url      = "https://rehabknowledge.com/forums/reply/489033/"
  standing = "second_hand"
}

citation "foot_drop_wiki" {
  text     = "Open wiki of physiotherapy on foot drop: look at passive dorsiflexion first"
  url      = "https://www.physio-pedia.com/index.php?title=Foot_drop&oldid=270541"
  standing = "second_hand"
}

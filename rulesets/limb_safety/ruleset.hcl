# What must be seen to before any device touches a leg, and what goes with it. Other rulesets build on this one and
# read its findings. It reads no diagnosis and applies to everybody.

ruleset "limb_safety" {
  title      = "Safety of a limb in a device"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says what to refer, what to stop and what to watch before a device touches a leg: skin, sensation, circulation, swelling, tone, fixed shape, growth, recent treatment, falls, driving, help and review. It chooses no device."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
}

# Skin, sensation, circulation

citation "contact_exclusions" {
  text     = "Children's hospital guideline 35 on serial casting, January 2009: broken skin, marked oedema, impaired circulation, recent thrombosis, low bone density and a hard end feel among its exclusions (opening read)"
  url      = "https://deploy.doczz.net/doc/6446525/serial-casting-target-users"
  standing = "read"
}

citation "sensation_by_missed_sites" {
  text     = "Loss of protective sensation as used in a study of 400 people: two or more missed applications at one site (PMC7950904)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC7950904"
  standing = "read"
}

citation "australian_offloading_2021" {
  text     = "Australian guideline on offloading of foot ulcers in diabetes, 2021, as published in J Foot Ankle Res 2022 (passage read)"
  url      = "https://oa.journalfeeds.online/2022/05/05/australian-guideline-on-offloading-treatment-for-foot-ulcers-part-of-the-2021-australian-evidence-based-guidelines-for-diabetes-related-foot-disease-journal-of-foot-and-ankle-research/"
  standing = "read"
}

citation "offloading_2023" {
  text     = "IWGDF guideline on offloading foot ulcers in diabetes, 2023 update (abstract)"
  url      = "https://discovery.researcher.life/article/guidelines-on-offloading-foot-ulcers-in-persons-with-diabetes-iwgdf-2023-update/0aa5a0f62137355bbc3637cc7737474a"
  standing = "read"
}

citation "charcot_2023" {
  text     = "IWGDF guideline on active Charcot neuro-osteoarthropathy in diabetes, 2023; not read"
  standing = "from_memory"
}

citation "redness_limits" {
  text     = "Leaflets of clinics for wearers of an orthosis: redness that lasts beyond 15, 15 to 20, 20, 30 or 45 minutes; no primary study was found"
  standing = "read"
}

# Swelling, tone, range

citation "teaching_precautions" {
  text     = "Teaching cards on ankle-foot orthoses (5524628): oedema and poor sensation a precaution, an open wound or fixed ankle deformity a contraindication; a jointed metal device where the leg swells"
  url      = "https://blog.brainscape.com/flashcards/ankle-foot-orthotics-5524628/packs/8321577"
  standing = "second_hand"
}

citation "teaching_utilisation" {
  text     = "Teaching cards on ankle-foot orthoses (6135523): composite where swelling varies, not where the ankle is loose sideways; no moving joint with a contracture"
  url      = "https://www.brainscape.com/flashcards/utilization-of-afo-in-rehab-6135523/packs/9429344"
  standing = "second_hand"
}

citation "clonus_five_beats" {
  text     = "Papers that call clonus sustained from five beats, as cited by a medical dictionary"
  standing = "second_hand"
}

citation "appasamy_2015" {
  text     = "Appasamy 2015, PM&R 7:105-12: strategies for the knee that hyperextends after stroke, n = 22; a fixed ankle with clonus, a moving one without (abstract, its last line cut)"
  url      = "https://ouci.dntb.gov.ua/en/works/lDJ6EBL7"
  standing = "read"
}

citation "lee_2011" {
  text     = "Lee 2011, Ann Rehabil Med 35(3): serial casting of equinus with and without an injection, n = 29; foot ulcers in 11.5 % (abstract)"
  url      = "https://e-arm.org/journal/view.php?number=6"
  standing = "read"
}

citation "carbon_stroke_trial" {
  text     = "Registered trial of composite ankle-foot orthoses after stroke (listing): a plantarflexion contracture of 15 deg or more, knee straight, is left out"
  url      = "https://www.trialx.com/clinical-trials/listings/313189/afo-prescription-to-optimize-post-stroke-function/"
  standing = "read"
}

citation "heel_height_teaching" {
  text     = "Rehabilitation teaching notes on ankle-foot orthoses: a lower heel pushes the knee back, a higher one makes it unsteady (opening)"
  url      = "https://scribd.com/document/637158650/Ankle-Foot-Orthoses"
  standing = "second_hand"
}

# The person

citation "nice_cp_table" {
  text     = "NICE CG145, full guideline, table 16: orthoses in children with spasticity, recommendations 37 to 43 (start of the table)"
  url      = "http://www.ncbi.nlm.nih.gov/books/NBK116573/table/ch5.t16/?report=objectonly"
  standing = "read"
}

citation "nice_cp" {
  text     = "NICE CG145, further recommendations on orthoses in children with spasticity; passage not read"
  url      = "https://nice.org.uk/guidance/cg145/chapter/recommendations"
  standing = "from_memory"
}

citation "nice_stroke" {
  text     = "NICE guideline on stroke rehabilitation (CG162, later NG236); lines on the ankle-foot orthosis not read"
  standing = "from_memory"
}

citation "wear_build_up_adult" {
  text     = "NHS leaflet on the ankle-foot orthosis: periods of 30 minutes, longer by 15 minutes each day"
  url      = "https://www.nth.nhs.uk/resources/ankle-foot-orthosis/"
  standing = "read"
}

citation "wear_build_up_child" {
  text     = "NHS leaflet on the ankle-foot orthosis for children: periods of 30 minutes, longer by 30 minutes each day"
  url      = "https://www.nth.nhs.uk/resources/ankle-foot-orthosis-for-children/"
  standing = "read"
}

citation "hofmann_2015" {
  text     = "Hofmann 2015, J Rehabil Med 47(10): ankle braces slow the foot from one pedal to the other, 30 healthy drivers (abstract)"
  doi      = "10.2340/16501977-2011"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-2011"
  standing = "read"
}

citation "braking_in_a_boot" {
  text     = "Braking in a walking boot against a shoe: 0.736 against 0.575 s, delayed in 55.5 against 2.5 % (safetylit citjournalarticle_528175_34, abstract)"
  url      = "https://safetylit.org/unapi/conversion.php?export=bib&id=ct%2Acitjournalarticle_528175_34"
  standing = "read"
}

citation "latz_2019" {
  text     = "Latz 2019, Foot Ankle Surg: driving took the right ankle to 22 deg of dorsiflexion and 13 deg of plantarflexion, 15 healthy drivers (abstract)"
  url      = "https://c.coek.info/pdf-doctor-when-can-i-drive-range-of-functional-ankle-motion-during-driving-.html"
  standing = "read"
}

citation "strength_of_orthoses" {
  text     = "ISO 22523, External limb prostheses and external orthoses, requirements and test methods; not read"
  standing = "from_memory"
}

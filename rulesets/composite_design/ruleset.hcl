# The complete design of a custom composite ankle-foot orthosis for one leg: alignment, stiffness and force pattern,
# settled together before the cast is taken. What no evidence and no practice settles is declared open, with what to weigh.

ruleset "composite_design" {
  title      = "Complete design of a custom composite ankle-foot orthosis"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Decides, for one leg, every choice of alignment, stiffness and force pattern of a composite ankle-foot orthosis, or says why it is the clinician's. It is for somebody for whom such a device has been chosen already."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.walking_aid != 'wheelchair'"
  builds_on  = ["limb_safety@1"]
}

# Sources beside those of the vocabulary

citation "bovi_2011" {
  text     = "Bovi 2011, Gait Posture 33:6, electronic addendum: inclination of the shank and ankle moments of healthy adults (n = 20) and young people by walking speed in body heights; figures at 30 % of the gait cycle taken from its curves"
  standing = "read"
}

citation "schwartz_2008" {
  text     = "Schwartz 2008, J Biomech 41:1639, electronic addendum: ankle angle and moment of 83 children at five speeds; peak moment 1.216 N.m/kg and peak dorsiflexion 12.8 deg at free speed"
  standing = "read"
}

citation "waterval_2019" {
  text     = "Waterval 2019, J Neuroeng Rehabil 16:120: five stiffnesses from 2.8 to 6.6 N.m/deg in calf weakness without spasticity, n = 37 (abstract)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC6798503"
  standing = "read"
}

citation "waterval_2021" {
  text     = "Waterval 2021, J Neuroeng Rehabil 18:97: stiffness picked by body mass and activity matched the measured best in 8 of 34 and was 1.2 N.m/deg too stiff on average, SD 1.3 (abstract)"
  doi      = "10.1186/s12984-021-00890-8"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/s12984-021-00890-8"
  standing = "read"
}

citation "arch_2016" {
  text     = "Arch and Reisman 2016, JPO 28:60: stiffness set from the deficit of plantarflexor moment, n = 2 (abstract; its equation was not seen)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2016/04000/Passive_Dynamic_Ankle_Foot_Orthoses_with.4.aspx"
  standing = "read"
}

citation "kobayashi_2017" {
  text     = "Kobayashi 2017: after stroke an articulated device had to give 0.029 to 0.062 N.m/kg against plantarflexion to keep the ankle up (abstract)"
  url      = "https://scholars.uky.edu/en/publications/contribution-of-ankle-foot-orthosis-moment-in-regulating-ankle-an"
  standing = "read"
}

citation "toe_clearance_slope" {
  text     = "Moosabhoy and Gard 2006: least toe clearance 19 mm, SD 5, and 17.1 cm for each radian at the ankle, 10 able-bodied people (abstract)"
  url      = "https://pubmed.ncbi.nlm.nih.gov/16439130/"
  standing = "read"
}

citation "kerkum_thesis" {
  text     = "Kerkum, PhD thesis, page 57: a lean of the shank set in standing at 5, 11 and 20 deg was larger in walking; a higher heel bent the knee more, a stiff foot plate lowered its moment"
  url      = "https://www.my-thesis.info/PDF/Kerkum/files/basic-html/page57.html"
  standing = "read"
}

citation "mulroy_2010" {
  text     = "Mulroy 2010, Prosthet Orthot Int 34:277: three designs after stroke, n = 30; stops at the ankle raise knee flexion in loading (abstract)"
  url      = "https://studylib.net/doc/8758663/"
  standing = "read"
}

citation "calf_weakness_trial" {
  text     = "BMJ Open, table 1 of a trial protocol: calf weakness as a grade below 5 or unable to do more than 3 heel rises"
  url      = "https://bmjopen.bmj.com/highwire/markup/115562/expansion"
  standing = "read"
}

citation "digiovanni_2002" {
  text     = "DiGiovanni 2002, J Bone Joint Surg Am 84:962: short gastrocnemius as 5 deg or less of dorsiflexion, knee extended"
  url      = "https://www.sandersclinic.net/scientific-articles/isolated-gastrocnemius-tightness/"
  standing = "read"
}

citation "subtalar_alignment_children" {
  text     = "Carmick 2012, Pediatr Phys Ther 24(4): four children whose orthoses did not hold the subtalar joint in neutral lost function (abstract)"
  url      = "http://journals.lww.com/pedpt/Fulltext/2012/24040/Importance_of_Orthotic_Subtalar_Alignment_for.2.aspx"
  standing = "read"
}

citation "fixed_deformity_teaching" {
  text     = "Teaching set on ankle-foot orthoses, brainscape.com 5524628: a fixed ankle deformity is accommodated, not corrected"
  url      = "https://blog.brainscape.com/flashcards/ankle-foot-orthotics-5524628/packs/8321577"
  standing = "second_hand"
}

citation "varus_strap" {
  text     = "Textbook chapter on osteotomy for the varus heel, clinicalpub.com (opening): brace with an outside strap against varus"
  url      = "https://clinicalpub.com/zosteotomy-for-varus-heel"
  standing = "read"
}

citation "dorsal_control" {
  text     = "Prosthet Orthot Int, 0309364614532864: heel rise held down in cadavers; 55.6 N by the most proximal dorsal strap at an obtuse angle, 90.4 N by the most distal (abstract)"
  url      = "https://sage.cnpereading.com/doi/10.1177/0309364614532864"
  standing = "read"
}

citation "kermavnar_2020" {
  text     = "Kermavnar 2020, Ergonomics 63:618: cuff at the knee of healthy adults, discomfort from 13.7 kPa held on and 30.4 kPa on and off (abstract)"
  url      = "https://suppr.wilddata.cn/browses/detail/pubmed/32167025"
  standing = "read"
}

citation "cuff_width" {
  text     = "Hum Factors 62:475: wide cuffs all round the limb hurt at a lower pressure than narrow ones (abstract)"
  url      = "https://peeref.com/works/19670137"
  standing = "read"
}

citation "strut_fractures" {
  text     = "Prosthet Orthot Int, 0309364616652015: carbon devices on a bench mostly broke at the upper end of the strut (abstract)"
  url      = "https://sage.cnpereading.com/doi/10.1177/0309364616652015"
  standing = "read"
}

citation "sound_side_insert" {
  text     = "Mohapatra 2012, n = 11: an insert on the sound side as thick as the device improved speed and symmetry, as reported by a patients' page"
  url      = "http://homeafterstroke.blogspot.com/2013/04/braces-can-create-leg-length-discrepancy.html"
  standing = "second_hand"
}

# The knee, and contracture under a shell in front

citation "appasamy_2015" {
  text     = "Appasamy 2015, PM&R 7:105-12: strategies for the knee that hyperextends after stroke, n = 22; a fixed ankle with clonus, a moving one without (abstract, its last line cut)"
  url      = "https://ouci.dntb.gov.ua/en/works/lDJ6EBL7"
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

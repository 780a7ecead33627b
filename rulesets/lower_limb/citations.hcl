# Sources on the examination. standing: read = the stated fact was read in the source or its abstract;
# second_hand = read in another text that reports it; from_memory = not read, to be checked before it is relied
# on. Where the authors of an abstract were not noted, its place is given instead of a name.

# Tone

citation "bohannon_1987" {
  text     = "Bohannon and Smith 1987, Phys Ther 67:206-207; grades as tabulated in J Neuroeng Rehabil 2013;10:61, table 2"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/1743-0003-10-61/tables/2"
  standing = "second_hand"
}

citation "ashworth_agreement_stroke" {
  text     = "Modified Ashworth in the lower limb after stroke: tau-b 0.062 between raters, 0.567 within one rater (abstract)"
  url      = "https://www.scilit.net/publications/92d09410eec1cae1af083383a8aed8c2"
  standing = "read"
}

citation "ashworth_agreement_cerebral_palsy" {
  text     = "Modified Ashworth in the lower limb in cerebral palsy: ICC 0.61 to 0.87 between raters, 0.36 to 0.83 on retest"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC2330046"
  standing = "read"
}

citation "barnes_2008" {
  text     = "Barnes and Johnson 2008, grades of the Tardieu scale, as reported by dss.dign.eu, entry 55"
  url      = "https://dss.dign.eu/details.php?id=55"
  standing = "second_hand"
}

citation "tardieu_angles" {
  text     = "Archives of Physical Medicine and Rehabilitation, S0003-9993(13)00522-4: definitions of the angles R1 and R2, lower limb"
  url      = "https://www.archives-pmr.org/article/S0003-9993(13)00522-4/fulltext"
  standing = "read"
}

citation "tardieu_end_angles" {
  text     = "Journal of Rehabilitation Medicine, 16501977-2496: Modified Tardieu joint angles in the lower limb, mean absolute difference 2.6 to 10.7 deg"
  url      = "https://www.medicaljournals.se/jrm/content/html/10.2340/16501977-2496"
  standing = "read"
}

citation "tardieu_agreement_stroke" {
  text     = "Clinical assessment of ankle plantarflexor spasticity in adults after stroke: R2 minus R1, ICC 0.57 between raters, 0.40 within (abstract)"
  url      = "https://augusta.elsevierpure.com/en/publications/clinical-assessment-of-ankle-plantarflexor-spasticity-in-adult-pa"
  standing = "read"
}

citation "patrick_2006" {
  text     = "Patrick and Ada 2006, Clin Rehabil 20:173: Tardieu against Ashworth, n = 16"
  url      = "https://studylib.net/doc/10798261/clinical-rehabilitation"
  standing = "read"
}

citation "degowin_1987" {
  text     = "DeGowin 1987, ankle clonus: 3 beats or more abnormal, 10 beats or more sustained; as reported by fpnotebook.com"
  url      = "https://fpnotebook.com/Neuro/Exam/AnklClns.htm"
  standing = "second_hand"
}

citation "clonus_teaching" {
  text     = "Clonus, teaching page of the University of Hong Kong: a few beats that fade may be normal"
  url      = "https://hkuelcn.hku.hk/clonus/"
  standing = "read"
}

# Power

citation "mrc_1976" {
  text     = "Medical Research Council grades 0 to 5, wording as given at eatonhand.com, clf311; the year is from memory"
  url      = "https://eatonhand.com/clf/clf311.htm"
  standing = "second_hand"
}

citation "muscle_test_grades" {
  text     = "Plus and minus grades of manual muscle testing, teaching set 22259160 on brainscape.com"
  standing = "second_hand"
}

citation "muscle_test_agreement" {
  text     = "Journal of Rehabilitation Medicine, 16501977-0235: manual muscle grades in radial palsy, weighted kappa 0.77 to 0.78 between raters, 0.82 to 0.86 within"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-0235"
  standing = "read"
}

citation "muscle_test_thirds" {
  text     = "Clinical reliability of manual muscle testing: the same or within a third of a grade in only 50 to 60 % between raters"
  url      = "https://studylib.net/doc/8130476/clinical-reliability-of-manual-muscle-testing"
  standing = "read"
}

citation "muscle_test_4plus" {
  text     = "Manual muscle grades: adding 4+ to the scale lowered agreement from 64 to 48 % (PMC5633899)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC5633899"
  standing = "read"
}

citation "lunsford_1995" {
  text     = "Lunsford and Perry 1995, Phys Ther 75:694: single-leg heel rises, n = 203, 20 to 59 years"
  url      = "https://painscience.com/bibliography.php?lunsford95"
  standing = "read"
}

citation "jan_2005" {
  text     = "Jan 2005, Phys Ther 85:1078: heel rises fall with age and in women, n = 180"
  url      = "https://www.mendeley.com/catalogue/773d1f99-5792-3855-8e1b-90bd682b1eef/"
  standing = "read"
}

citation "hislop_montgomery" {
  text     = "Hislop and Montgomery, muscle testing: grades of the plantarflexors by full and part heel rises"
  standing = "from_memory"
}

citation "hebert_losier_2017" {
  text     = "Hebert-Losier 2017, Physiotherapy 103:446: heel rises, n = 566; limits of agreement between days -6.2 to 6.5"
  url      = "https://researchcommons.waikato.ac.nz/handle/10289/11322"
  standing = "read"
}

citation "hand_held_dynamometry" {
  text     = "Hand-held dynamometry of the leg: standard error 8 to 28 % of the reading, between raters ICC 0.61 at the ankle (PMC5875759)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC5875759/"
  standing = "read"
}

# Range

citation "goniometry_ankle_children" {
  text     = "Ankle dorsiflexion by goniometer in children with cerebral palsy, test and retest: standard error 2.86 deg (BMR-170862, abstract)"
  url      = "https://www.peeref.com/works/5447517"
  standing = "read"
}

citation "mcdowell_2000" {
  text     = "McDowell 2000, The variability of goniometric measurements in ambulatory children with spastic cerebral palsy"
  url      = "https://salford-repository.worktribe.com/output/1450359/the-variability-of-goniometric-measurements-in-ambulatory-children-with-spastic-cerebral-palsy"
  standing = "read"
}

citation "jarvis_2012" {
  text     = "Jarvis 2012, J Foot Ankle Res 5:14: 11 assessors, total error of ankle dorsiflexion up to 10.7 deg; poor agreement on limb length"
  url      = "http://www.jfootankleres.com/content/5/1/14/postcomment"
  standing = "read"
}

citation "lunge_reliability" {
  text     = "Ankle dorsiflexion in the weight-bearing lunge by goniometer, inclinometer and tape, 20 healthy people (PubMed 22666642, abstract)"
  url      = "https://pubmed.ncbi.nlm.nih.gov/22666642/?dopt=Abstract"
  standing = "read"
}

citation "plantarflexion_goniometry" {
  text     = "The reliability of a novel heel-rise test versus goniometry to assess plantarflexion range of motion, n = 43"
  url      = "https://discovery.researcher.life/article/the-reliability-of-a-novel-heelrise-test-versus-goniometry-to-assess-plantarflexion-range-of-motion/e4633490435c395c852ad76b40d497f2"
  standing = "read"
}

citation "baumbach_2014" {
  text     = "Baumbach 2014, BMC Musculoskelet Disord 15:246: 20 deg of knee bend frees the gastrocnemius"
  doi      = "10.1186/1471-2474-15-246"
  url      = "http://bmcmusculoskeletdisord.biomedcentral.com/articles/10.1186/1471-2474-15-246"
  standing = "read"
}

citation "dorsiflexion_in_supination" {
  text     = "Teaching text on the examination in cerebral palsy, icnapedia.org: hold the foot supinated so that dorsiflexion is at the ankle"
  url      = "https://icnapedia.org/webinars/16-management-of-spasticity-in-cerebral-palsy-part-ii-passive-and-active-examination?start=8"
  standing = "read"
}

citation "knee_extension_reliability" {
  text     = "Knee extension after cruciate ligament injury, n = 92, goniometer, inclinometer and app (thieme a-2321-0516)"
  doi      = "10.1055/a-2321-0516"
  url      = "https://thieme-connect.de/products/ejournals/html/10.1055/a-2321-0516"
  standing = "read"
}

citation "knee_replacement_goniometry" {
  text     = "BMC Musculoskelet Disord 8:83: passive knee extension three days after knee replacement, limits between two therapists -6.2 to 10.6 deg"
  doi      = "10.1186/1471-2474-8-83"
  url      = "https://www.jrheum.org/lookup/external-ref?access_num=10.1186/1471-2474-8-83&link_type=DOI"
  standing = "read"
}

citation "contracture_margins" {
  text     = "Sci Rep 2023;13:21779, table 2: margins before a contracture is declared, hip 6, knee 4, ankle 8 deg"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC10709314/table/Tab2"
  standing = "read"
}

citation "vigotsky_2016" {
  text     = "Vigotsky 2016, PeerJ e2325: the Thomas test needs the pelvis held"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC4991856"
  standing = "read"
}

citation "thomas_agreement" {
  text     = "Hip extension by goniometer in the Thomas test: ICC 0.51 and 0.54 within raters, 0.30 to 0.65 between (PMC4560013)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC4560013"
  standing = "read"
}

citation "thomas_knee_angle" {
  text     = "Knee angle in the modified Thomas test: standard error 7 deg (J Athl Train, PMC2547866)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC2547866"
  standing = "read"
}

citation "katz_1992" {
  text     = "Katz 1992, J Pediatr Orthop 12:229-231: popliteal angle, n = 482"
  url      = "https://cris.tau.ac.il/en/publications/normal-ranges-of-popliteal-angle-in-children"
  standing = "read"
}

# Foot

citation "redmond_2005" {
  text     = "Redmond 2005, Foot Posture Index manual; item wording and bands from memory, corroborated second-hand"
  url      = "https://studylib.net/doc/8078879/the-foot-posture-index"
  standing = "from_memory"
}

citation "redmond_2006" {
  text     = "Redmond 2006, Clin Biomech 21:89: Foot Posture Index; front page read, bands from memory"
  url      = "https://studylib.net/doc/25374115/"
  standing = "from_memory"
}

citation "redmond_2008" {
  text     = "Redmond 2008, J Foot Ankle Res 1:6: Foot Posture Index, normal values, n = 619 healthy"
  url      = "https://pubmed.ncbi.nlm.nih.gov/18822155/"
  standing = "read"
}

citation "fpi_agreement_children" {
  text     = "Foot Posture Index in children, weighted kappa 0.86 between raters (PMC2770503)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC2770503"
  standing = "read"
}

citation "foot_class_agreement" {
  text     = "Foot posture measures: rearfoot angle weighted kappa 0.60, navicular drop 0.40 (PMC5131537)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC5131537"
  standing = "read"
}

citation "subtalar_agreement" {
  text     = "Subtalar positions between therapists: neutral ICC 0.76, greatest inversion 0.37, greatest eversion 0.39 (PubMed 9801083)"
  url      = "https://www.ncbi.nlm.nih.gov/pubmed/9801083"
  standing = "read"
}

citation "astrom_1995" {
  text     = "Astrom and Arvidson 1995, JOSPT 22:216: alignment of 121 healthy feet"
  url      = "https://pubmed.ncbi.nlm.nih.gov/8580949/?dopt=Abstract"
  standing = "read"
}

citation "block_test" {
  text     = "Coleman block test, orthopaedic textbook online"
  url      = "https://www.wheelessonline.com/bones/foot/coleman-block-test/"
  standing = "second_hand"
}

citation "navicular_drop_norms" {
  text     = "Navicular drop: depends on foot length and sex, n = 280 (Nielsen 2009)"
  doi      = "10.1186/1757-1146-2-12"
  url      = "https://mijn.bsl.nl/link?doi=10.1186/1757-1146-2-12"
  standing = "read"
}

# Standing and walking

citation "perry_1995" {
  text     = "Perry 1995, Stroke 26:982: household, limited community and community walking; read as used by Schmid 2007"
  url      = "https://ufdcimages.uflib.ufl.edu/UF/E0/01/13/89/00001/schmid_a_Page_033.txt"
  standing = "second_hand"
}

citation "hosoi_2023" {
  text     = "Hosoi 2023, Front Neurol: change in comfortable speed after stroke, by speed class"
  doi      = "10.3389/fneur.2023.1219505"
  url      = "https://frontiersin.org/articles/10.3389/fneur.2023.1219505/full"
  standing = "read"
}

citation "speed_change_stroke" {
  text     = "J Neurol Phys Ther 2019: change in comfortable speed in chronic stroke, n = 76, by speed class"
  url      = "https://nursingcenter.com/journalarticle?Article_ID=4951094&Issue_ID=4950726&Journal_ID=4231915"
  standing = "read"
}

citation "holden_1984" {
  text     = "Holden 1984, Functional Ambulation Category, as reported in scribd 513150049"
  url      = "https://scribd.com/document/513150049/3785-62959-2-SP"
  standing = "second_hand"
}

citation "ninds_ambulation" {
  text     = "NINDS common data element 24968: the same category coded 1 to 6"
  url      = "https://commondataelements.ninds.nih.gov/report-viewer/24968/Functional%20Ambulation%20Category"
  standing = "read"
}

citation "collen_1990" {
  text     = "Collen 1990, Functional Ambulation Category, kappa 0.36, as reported by strokengine.ca"
  url      = "https://www.strokengine.ca/en/psycho/fac_psycho/"
  standing = "second_hand"
}

citation "gross_motor_levels" {
  text     = "Gross motor function levels, expanded and revised, as in BMC Pediatr s12887-015-0433-5, table 2"
  doi      = "10.1186/s12887-015-0433-5"
  url      = "https://bmcpediatr.biomedcentral.com/articles/10.1186/s12887-015-0433-5/tables/2"
  standing = "read"
}

citation "timed_walk_knee" {
  text     = "Timed Up and Go in knee osteoarthritis: smallest real change 1.10 s (BMC Musculoskelet Disord s12891-015-0637-8)"
  doi      = "10.1186/s12891-015-0637-8"
  url      = "https://bmjopensem.bmj.com/lookup/external-ref?access_num=10.1186/s12891-015-0637-8&link_type=DOI"
  standing = "read"
}

citation "shank_sensor" {
  text     = "A single inertial measurement unit on the shank to assess the shank-to-vertical angle: -0.7, SD 2.1 deg against 3D analysis"
  url      = "https://discovery.researcher.life/article/a-single-inertial-measurement-unit-on-the-shank-to-assess-the-shank-to-vertical-angle/3ebc12522b51330e8d8c15d20e2f1eb5"
  standing = "read"
}

citation "eddison_2017" {
  text     = "Eddison 2017, JPO 29:161: shank-to-vertical angle, inclined forward positive"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2017/10000/Shank_to_Vertical_Angle_in_Ankle_Foot_Orthoses__A.3.aspx"
  standing = "read"
}

citation "owen_2010" {
  text     = "Owen 2010, Prosthet Orthot Int 34:254-69: tuned shank-to-vertical angles; abstract read, figures from memory"
  url      = "https://pubmed.ncbi.nlm.nih.gov/20738230/"
  standing = "from_memory"
}

citation "visual_gait_items" {
  text     = "Read 2003, Edinburgh Visual Gait Score: its 17 items, as listed by a physiotherapy teaching page"
  url      = "http://blogs.elon.edu/ptkids/2017/03/06/edinburgh-visual-gait-score/"
  standing = "second_hand"
}

citation "video_angles" {
  text     = "Joint angles from sagittal video against 3D analysis in adults with cerebral palsy: mean difference 3, 5, 7 deg, limits 18, 10, 15 deg at hip, knee, ankle"
  url      = "https://c.coek.info/pdf-ambulant-adults-with-spastic-cerebral-palsy-the-validity-of-lower-limb-joint-ang.html"
  standing = "read"
}

citation "sagittal_patterns" {
  text     = "J Neuroeng Rehabil 2023, s12984-023-01162-3, table 4: sagittal gait patterns in cerebral palsy"
  doi      = "10.1186/s12984-023-01162-3"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/s12984-023-01162-3/tables/4"
  standing = "read"
}

citation "winters_1987" {
  text     = "Winters 1987, JBJS-A 69:437: gait patterns in hemiplegia, n = 46"
  url      = "https://www.ncbi.nlm.nih.gov/pubmed/3818706?dopt=Abstract"
  standing = "read"
}

citation "kerkum_2013" {
  text     = "Kerkum 2013, BMC Pediatr 13:17, table 1: who was left out of a trial of stiff orthoses"
  doi      = "10.1186/1471-2431-13-17"
  url      = "https://bmcpediatr.biomedcentral.com/articles/10.1186/1471-2431-13-17/tables/1"
  standing = "read"
}

citation "iso_8551" {
  text     = "ISO 8551:2020, Functional deficiencies, description of the person to be treated with an orthosis (preview, 4.5 to 4.6.4)"
  standing = "read"
}

citation "toe_clearance_range" {
  text     = "Moosabhoy and Gard 2006: least toe clearance 19 mm, SD 5, at 51 % of swing, n = 10, and how it follows the joint angles (PubMed 16439130)"
  url      = "https://pubmed.ncbi.nlm.nih.gov/16439130/"
  standing = "read"
}

# Sensation, skin, circulation

citation "monofilament_procedure" {
  text     = "IWGDF procedure for the 10 g monofilament, as reported by dmdisease.com"
  url      = "https://dmdisease.com/10g-5-07-semmes-weinstein-monofilament"
  standing = "second_hand"
}

citation "monofilament_sites" {
  text     = "Sites of the 10 g monofilament on the foot"
  standing = "from_memory"
}

citation "monofilament_agreement" {
  text     = "10 g monofilament at 18 sites: smallest real change 2.8 sites (abstract)"
  url      = "https://nursingcenter.com/journalarticle?Article_ID=1220341&Issue_ID=1219868&Journal_ID=1131080"
  standing = "read"
}

citation "schaper_2020" {
  text     = "Schaper 2020, IWGDF practical guidelines 2019: risk categories 0 to 3"
  url      = "https://www.scribd.com/document/546275374/Schaper-et-al-2020-IWGDF-practical-guidelines-03-03"
  standing = "read"
}

citation "pressure_index_2020" {
  text     = "J Foot Ankle Res 2020, s13047-020-00389-w: ankle brachial pressure index, bands and repeatability"
  doi      = "10.1186/s13047-020-00389-w"
  url      = "https://jfootankleres.biomedcentral.com/articles/10.1186/s13047-020-00389-w"
  standing = "read"
}

citation "pressure_index_oscillometer" {
  text     = "Repeatability of the ankle brachial index by oscillometer, 4 to 8 weeks apart: smallest real change 0.20 to 0.22"
  url      = "https://longdom.org/open-access/repeatability-of-oscillometric-determinations-of-the-anklebrachial-index-the-atherosclerosis-risk-in-communities-aric-st-23089.html"
  standing = "read"
}

citation "limb_ischaemia_bands" {
  text     = "Bands of the ankle brachial pressure index and ankle pressure by severity (PMC1363917, table 7)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC1363917/table/tbl7"
  standing = "read"
}

citation "toe_pressure_guidance" {
  text     = "IWGDF guidance on arterial disease: toe index 0.75 or more largely excludes it, as reported by a news digest"
  url      = "https://speciality.medicaldialogues.in/iwgdf-guidance-on-pad-management-in-diabetic-foot-ulcer-patients/"
  standing = "second_hand"
}

citation "pitting_depths" {
  text     = "Depths of pitting oedema, general health page; its times of rebound disagree between sources"
  url      = "https://biologyinsights.com/how-to-grade-edema-and-what-the-different-stages-mean"
  standing = "second_hand"
}

citation "redness_leaflet" {
  text     = "Ankle-foot orthosis, patient's guide of a national orthopaedic hospital: report redness that lasts beyond 20 minutes"
  url      = "https://rnoh.nhs.uk/patients-and-visitors/patient-information-guides/ankle-foot-orthosis-afo-patients-guide"
  standing = "read"
}

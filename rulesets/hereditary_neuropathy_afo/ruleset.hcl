# Orthosis for a leg with inherited neuropathy, child and adult: which family of device, how a varus foot is taken, what
# is looked at again and when. Not the full design.

ruleset "hereditary_neuropathy_afo" {
  title      = "Ankle-foot orthosis in inherited neuropathy"
  version    = "1.1.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says which family of device suits a child or adult with an inherited neuropathy, how a cavovarus foot is taken, and what changes as the condition goes on. A starting point for a clinic's own protocol."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
  applies    = "person.diagnosis_group == 'hereditary_neuropathy'"
  builds_on  = ["limb_safety@1"]
}

citation "scheffers_2012" {
  text     = "Scheffers 2012, Phys Ther Rev 17:79-90, and J Foot Ankle Res 5(S1):P23: review and algorithm for children with Charcot-Marie-Tooth disease (abstracts)"
  doi      = "10.1179/1743288X11Y.0000000052"
  url      = "http://jfootankleres.biomedcentral.com/articles/10.1186/1757-1146-5-S1-P23"
  standing = "read"
}

citation "borghi_2023" {
  text     = "Borghi 2023, Children 10:1529: composite and rigid orthoses in three adolescents with hereditary neuropathy, compared with each other in two (abstract)"
  doi      = "10.3390/children10091529"
  url      = "https://www2.mdpi.com/2227-9067/10/9/1529"
  standing = "read"
}

citation "menotti_2014" {
  text     = "Menotti 2014, Prosthet Orthot Int 38:387-92: anterior elastic orthosis against shoes alone in 7 adults with Charcot-Marie-Tooth disease type 1A, 2.39 against 2.70 J/kg/m at equal speed (abstract)"
  doi      = "10.1177/0309364613506250"
  url      = "https://pubmed.ncbi.nlm.nih.gov/24100074/"
  standing = "read"
}

citation "nonnekes_2021" {
  text     = "Nonnekes 2021, J Rehabil Med 53(5): step-wise algorithm for walking in Charcot-Marie-Tooth disease, conservative and surgical (abstract; the steps were not read)"
  doi      = "10.2340/16501977-2831"
  url      = "https://medicaljournals.se/jrm/content/html/10.2340/16501977-2831"
  standing = "read"
}

citation "kelley_2007" {
  text     = "Kelley and DiBello 2007, J Prosthet Orthot 19:109: assessment for orthoses after polio; the weight of a device costs energy (opening)"
  url      = "https://journals.lww.com/jpojournal/Fulltext/2007/10000/Orthotic_Assessment_for_Individuals_With_Postpolio.6.aspx"
  standing = "read"
}

citation "cavovarus_equinus_2015" {
  text     = "J Foot Ankle Res 2015;8:65: in 80 cavovarus feet with Charcot-Marie-Tooth disease dorsiflexion at the ankle itself was less in 18, usual in 31, more in 31 (abstract)"
  url      = "http://www.jfootankleres.com/content/8/1/65/abstract"
  standing = "read"
}

citation "foot_drop_wiki" {
  text     = "Open wiki of physiotherapy on foot drop: look at passive dorsiflexion first"
  url      = "https://www.physio-pedia.com/index.php?title=Foot_drop&oldid=270541"
  standing = "second_hand"
}

citation "varus_strap" {
  text     = "Textbook chapter on osteotomy for the varus heel, clinicalpub.com (opening): brace with an outside strap against varus"
  url      = "https://clinicalpub.com/zosteotomy-for-varus-heel"
  standing = "read"
}

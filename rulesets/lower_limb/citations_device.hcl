# Sources on lengths and on the device. What standing means is said in citations.hcl.

citation "leg_length_tape" {
  text     = "J Rheumatol 2014;41:1689: leg-length difference by tape and by lifts, ICC 0.477 and 0.737, wrong side in 7 and 1 of 20"
  url      = "https://pubmed.ncbi.nlm.nih.gov/25028369/"
  standing = "read"
}

citation "leg_length_blocks" {
  text     = "Leg-length difference: blocks preferred (PMC8687568)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC8687568"
  standing = "read"
}

citation "totah_2019" {
  text     = "Totah 2019: stiffness of ankle-foot orthoses in 25 studies, 0.02 to 8.17 N.m/deg"
  url      = "https://read.qxmd.com/read/30708092"
  standing = "read"
}

citation "shuman_2023" {
  text     = "Shuman 2023, J Neuroeng Rehabil: 13 carbon devices on five test benches, median spread 1.03 N.m/deg, on the four with a fixture 0.52"
  doi      = "10.1186/s12984-023-01126-7"
  url      = "https://jneuroengrehab.biomedcentral.com/articles/10.1186/s12984-023-01126-7"
  standing = "read"
}

citation "shuman_2021" {
  text     = "Shuman 2021: 13 carbon devices as sold, 0.58 to 3.66 N.m/deg over a motorised sweep of 20 deg, ICC 0.95 or more (PMC8420787)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC8420787"
  standing = "read"
}

citation "carbon_modulus" {
  text     = "Carbon fibre in epoxy, 70 % fibre in one direction: modulus 181 GPa along the fibres, 10.3 GPa across (substech.com)"
  url      = "http://www.substech.com/dokuwiki/doku.php?id=epoxy_matrix_composite_reinforced_by_70_carbon_fibers"
  standing = "read"
}

citation "carbon_modulus_prepreg" {
  text     = "Carbon fibre in epoxy from prepreg: modulus 103.0, SD 2.1 GPa along the fibres (Acta Mech Autom 2025)"
  doi      = "10.2478/ama-2025-0022"
  url      = "https://reference-global.com/article/10.2478/ama-2025-0022"
  standing = "read"
}

citation "device_angle_error" {
  text     = "Gait Posture 2021, 90:86: angle of a finished device by inclinometers, mean deviation 2.4 deg, 19 devices"
  url      = "https://searchworks.jioinstitute.edu.in/articles/asx__153297153"
  standing = "read"
}

citation "wear_leaflet" {
  text     = "NHS leaflet on the ankle-foot orthosis: daily skin check, wear in the shoe, inspect before use"
  url      = "https://nbt.nhs.uk/bristol-centre-enablement/services-at-centre/orthotics/ankle-foot-orthosis"
  standing = "read"
}

citation "foot_drop_table" {
  text     = "Kirker 2022, Pract Neurol 22:311, table: impairment and orthotic solution"
  url      = "https://pn.bmj.com/content/22/4/311"
  standing = "read"
}

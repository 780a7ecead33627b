# Where the shell is relieved: one rule for each place. Where several fire the choice stays open and names them all, and
# the clinician takes more than one. Common practice, no source.

rule "relieve_the_malleoli" {
  when     = "limb.malleolar_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the malleoli is ${limb.malleolar_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "malleoli"
  }
}

rule "relieve_the_navicular" {
  when     = "limb.navicular_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the navicular is ${limb.navicular_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "navicular"
  }
}

rule "relieve_the_first_metatarsal_head" {
  when     = "limb.first_metatarsal_head_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the first metatarsal head is ${limb.first_metatarsal_head_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "first_metatarsal_head"
  }
}

rule "relieve_the_fifth_metatarsal_base" {
  when     = "limb.fifth_metatarsal_base_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the base of the fifth metatarsal is ${limb.fifth_metatarsal_base_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "fifth_metatarsal_base"
  }
}

rule "relieve_the_fifth_metatarsal_head" {
  when     = "limb.fifth_metatarsal_head_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the fifth metatarsal head is ${limb.fifth_metatarsal_head_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "fifth_metatarsal_head"
  }
}

rule "relieve_the_heel" {
  when     = "limb.heel_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the heel is ${limb.heel_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "heel"
  }
}

rule "relieve_the_instep" {
  when     = "limb.foot_dorsum_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the top of the foot is ${limb.foot_dorsum_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "instep"
  }
}

rule "relieve_the_tibial_crest" {
  when     = "limb.anterior_shin_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the front of the shin is ${limb.anterior_shin_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "tibial_crest"
  }
}

rule "relieve_the_fibular_head" {
  when     = "limb.fibular_head_skin in ['fragile', 'red_after_pressure']"
  because  = "The skin over the fibular head is ${limb.fibular_head_skin}: the shell stands clear of it. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "relief" {
    never  = "none"
    favour = "fibular_head"
  }
}

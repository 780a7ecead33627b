# Drawn once for the benchmarks of package replay by draw_test.go; it means nothing.

ruleset "bench" {
  title      = "Drawn for benchmarks"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "measured@1"
}

finding "f00" {
  holds = "(limb.oedema || limb.swing_pattern in ['usual', 'drop'])"
}

finding "f01" {
  holds = "(limb.limb_load < kg(100) || limb.wound)"
}

finding "f02" {
  holds = "(limb.subtalar_inversion >= deg(20) && limb.heel_rises > 12)"
}

finding "f03" {
  holds = "(limb.clonus && limb.limb_load >= kg(140))"
}

finding "f04" {
  holds = "(limb.oedema && limb.popliteal_angle < deg(75))"
}

finding "f05" {
  holds = "(limb.plantarflexor_power < muscle_power('3-') || limb.knee_flexion >= deg(140))"
}

finding "f06" {
  holds = "(limb.limb_load >= kg(120) && limb.hip_extension >= deg(-10))"
}

finding "f07" {
  holds = "(limb.dorsiflexor_power <= muscle_power('5') && limb.ankle_plantarflexion <= deg(10))"
}

finding "f08" {
  holds = "(limb.skin == 'fragile' && limb.plantarflexor_tone < tone('2'))"
}

finding "f09" {
  holds = "(limb.ankle_plantarflexion < deg(70) && limb.wound)"
}

finding "f10" {
  holds = "(limb.calf_girth > mm(400) && limb.hamstring_tone <= tone('1'))"
}

finding "f11" {
  holds = "(limb.popliteal_angle > deg(60) && limb.sensation in ['intact', 'reduced'])"
}

finding "f12" {
  holds = "(limb.sensation == 'intact' && limb.sensation == 'reduced')"
}

finding "f13" {
  holds = "(limb.plantarflexor_power < muscle_power('3+') && limb.hip_extension >= deg(30))"
}

finding "f14" {
  holds = "(limb.foot_shape == 'planus' && limb.ankle_plantarflexion > deg(20))"
}

finding "f15" {
  holds = "(limb.limb_load >= kg(120) || limb.sensation in ['reduced', 'absent'])"
}

finding "f16" {
  holds = "(limb.hip_flexion < deg(54) || limb.clonus)"
}

finding "f17" {
  holds = "!(limb.limb_load < kg(20) && limb.knee_flexion > deg(40))"
}

finding "f18" {
  holds = "(limb.plantarflexor_tone > tone('1+') || limb.dorsiflexor_power <= muscle_power('3+'))"
}

finding "f19" {
  holds = "(limb.hip_flexion <= deg(72) && limb.foot_length <= mm(220))"
}

rule "r000" {
  when     = "((finding.f19 || limb.foot_length >= mm(180)) && (limb.knee_flexion > deg(120) || !(limb.oedema || limb.clonus)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-6)" }
}

rule "r001" {
  when     = "((limb.posture_total <= 3 || limb.limb_load > kg(140)) || finding.f10)"
  unless   = "finding.f08"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { favour = ["later"] }
  advise "cast_angle" { aim = "deg(-9)" }
}

rule "r002" {
  when     = "((limb.plantarflexor_tone >= tone('2') || limb.popliteal_angle > deg(45)) || finding.f11)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["medial"] }
  advise "heel_raise" { at_least = "mm(16)" }
}

rule "r003" {
  when     = "(limb.clonus && (limb.swing_pattern in ['drop', 'circumduction'] && (finding.f16 || limb.subtalar_eversion <= deg(25))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["spiral"] }
  advise "review" { favour = ["soon"] }
}

rule "r004" {
  when     = "((finding.f15 || finding.f09) || limb.knee_extension >= deg(-12))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r006"]
  advise "shell_side" { never = ["posterior"] }
  advise "review" { favour = ["soon"] }
}

rule "r005" {
  when     = "((limb.heel_rises <= 16 && (finding.f02 && limb.heel_rises <= 16)) && (finding.f03 || limb.quadriceps_power > muscle_power('5-')))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "articulation" { favour = ["free"] }
  advise "cast_angle" { aim = "deg(8)" }
}

rule "r006" {
  when     = "(limb.quadriceps_power <= muscle_power('2+') && (limb.plantarflexor_tone >= tone('4') || limb.skin in ['broken', 'intact']))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "trimline" { favour = ["in_front"] }
}

rule "r007" {
  when     = "((limb.tibial_torsion < deg(32) || limb.subtalar_eversion > deg(10)) && limb.foot_shape == 'neutral')"
  unless   = "limb.subtalar_eversion > deg(25)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "trimline" { favour = ["behind"] }
}

rule "r008" {
  when     = "!(!(finding.f05 || (finding.f14 || limb.ankle_girth >= mm(190))) || (finding.f08 || limb.ankle_plantarflexion < deg(50)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(1)" }
}

rule "r009" {
  when     = "((finding.f10 && finding.f19) && (limb.calf_girth < mm(550) && (finding.f12 && limb.knee_extension > deg(-26))))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { never = ["free"] }
}

rule "r010" {
  when     = "((((limb.posture_total > -3 && limb.dorsiflexor_power < muscle_power('3')) || limb.popliteal_angle >= deg(90)) && finding.f19) && limb.popliteal_angle > deg(75))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { at_least = "deg(-16)" }
}

rule "r011" {
  when     = "(!((limb.popliteal_angle < deg(15) || finding.f16) && (limb.clonus && limb.swing_pattern == 'usual')) || limb.dorsiflexor_power >= muscle_power('3-'))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { at_most = "deg(2)" }
}

rule "r012" {
  when     = "!(finding.f00 && ((finding.f06 && !(limb.plantarflexor_power > muscle_power('2') || finding.f02)) || limb.hip_extensor_power > muscle_power('3')))"
  unless   = "finding.f18"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["lateral"] }
}

rule "r013" {
  when     = "!(limb.ankle_dorsiflexion >= deg(20) || ((limb.leg_length >= mm(1100) || finding.f02) || (limb.knee_flexion <= deg(60) && limb.dorsiflexor_power >= muscle_power('3-'))))"
  unless   = "finding.f03"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r017"]
  advise "closure" { favour = ["buckle"] }
  advise "padding" { favour = ["thick"] }
}

rule "r014" {
  when     = "((limb.tibial_torsion <= deg(44) && limb.plantarflexor_power > muscle_power('2')) || ((finding.f00 || limb.hip_flexion >= deg(72)) || limb.skin in ['intact', 'fragile']))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "review" { favour = ["soon"] }
  advise "trimline" { favour = ["in_front"] }
}

rule "r015" {
  when     = "(finding.f16 || (limb.heel_rises >= 4 || (limb.knee_flexion > deg(60) || limb.hip_extensor_power >= muscle_power('4+'))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "foot_plate" { never = ["to_ball"] }
}

rule "r016" {
  when     = "((limb.sensation in ['absent', 'intact'] || limb.sensation in ['reduced', 'absent']) || limb.foot_length >= mm(200))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r018"]
  advise "padding" { never = ["thick"] }
}

rule "r017" {
  when     = "(limb.foot_length >= mm(280) && ((limb.hip_flexion >= deg(90) && limb.hamstring_tone >= tone('1+')) && limb.skin in ['broken', 'intact']))"
  unless   = "limb.subtalar_inversion > deg(5)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { never = ["thick"] }
  advise "review" { never = ["soon"] }
}

rule "r018" {
  when     = "(limb.swing_pattern in ['circumduction', 'vaulting'] && ((limb.plantarflexor_tone <= tone('2') || finding.f13) && !(limb.popliteal_angle <= deg(15) && finding.f00)))"
  unless   = "limb.quadriceps_power <= muscle_power('3-')"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { favour = ["posterior"] }
}

rule "r019" {
  when     = "(!(limb.subtalar_eversion >= deg(5) && (finding.f02 && finding.f00)) && (limb.sensation == 'reduced' || limb.heel_rises <= 12))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { favour = ["spring"] }
}

rule "r020" {
  when     = "(((limb.sensation in ['reduced', 'absent'] && finding.f10) || limb.wound) || limb.knee_extension < deg(9))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { favour = ["free"] }
  advise "foot_plate" { favour = ["full"] }
}

rule "r021" {
  when     = "((finding.f17 || (finding.f01 && limb.hip_extensor_power <= muscle_power('2+'))) || (finding.f14 || limb.dorsiflexor_power < muscle_power('5')))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["full"] }
  advise "shell_side" { never = ["posterior"] }
}

rule "r022" {
  when     = "((limb.subtalar_inversion > deg(20) || limb.knee_flexion <= deg(60)) && (limb.oedema || limb.wound))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { never = ["spiral"] }
  advise "shell_side" { never = ["posterior"] }
}

rule "r023" {
  when     = "!((limb.heel_rises >= 12 || limb.heel_rises <= 20) || (limb.posture_total >= 0 || (limb.swing_pattern in ['vaulting', 'steppage'] || finding.f00)))"
  unless   = "finding.f19"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "review" { favour = ["soon"] }
  advise "trimline" { favour = ["behind"] }
}

rule "r024" {
  when     = "(limb.limb_load <= kg(20) && (limb.swing_pattern in ['drop', 'circumduction'] || limb.plantarflexor_tone <= tone('2')))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "articulation" { favour = ["spring"] }
}

rule "r025" {
  when     = "(finding.f07 || (limb.foot_length >= mm(200) && limb.plantarflexor_power < muscle_power('5')))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { favour = ["spiral"] }
}

rule "r026" {
  when     = "((!(finding.f00 && limb.dorsiflexor_power > muscle_power('2-')) && limb.plantarflexor_power > muscle_power('5-')) && limb.hamstring_tone > tone('2'))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "padding" { favour = ["thin"] }
}

rule "r027" {
  when     = "((limb.clonus && limb.hip_extensor_power <= muscle_power('2-')) || finding.f03)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r029"]
  advise "closure" { favour = ["none"] }
  advise "review" { favour = ["soon"] }
}

rule "r028" {
  when     = "((limb.hip_extension > deg(0) && limb.wound) && (limb.ankle_girth > mm(365) || (limb.knee_extension >= deg(-26) || limb.foot_shape in ['neutral', 'planus'])))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { never = ["spiral"] }
}

rule "r029" {
  when     = "!(limb.hip_flexion < deg(72) && (limb.subtalar_inversion < deg(5) && !(limb.hip_extension <= deg(20) || limb.clonus)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-14)" }
}

rule "r030" {
  when     = "((limb.skin in ['broken', 'intact'] || finding.f07) && limb.oedema)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "heel_raise" { at_most = "mm(44)" }
}

rule "r031" {
  when     = "((finding.f12 || limb.dorsiflexor_power > muscle_power('3')) || limb.wound)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["full"] }
  advise "review" { favour = ["later"] }
}

rule "r032" {
  when     = "(finding.f19 && (((limb.hip_flexion > deg(54) || finding.f18) || limb.subtalar_eversion > deg(25)) && limb.hip_flexion <= deg(90)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { favour = ["thin"] }
}

rule "r033" {
  when     = "(limb.foot_length < mm(280) || (limb.ankle_girth <= mm(155) && limb.swing_pattern in ['vaulting', 'steppage']))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r034"]
  advise "review" { favour = ["later"] }
}

rule "r034" {
  when     = "(limb.posture_total < 6 && (limb.sensation in ['intact', 'reduced'] || finding.f03))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "shell_side" { favour = ["both"] }
}

rule "r035" {
  when     = "(((limb.ankle_dorsiflexion <= deg(10) && limb.oedema) && limb.tibial_torsion >= deg(-16)) && limb.knee_flexion < deg(80))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "closure" { never = ["laces"] }
  advise "padding" { favour = ["none"] }
}

rule "r036" {
  when     = "((finding.f07 && limb.subtalar_inversion < deg(30)) && ((limb.dorsiflexor_power <= muscle_power('2+') || limb.hip_extension >= deg(-20)) || finding.f02))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "shell_side" { never = ["posterior"] }
  advise "heel_raise" { at_most = "mm(51)" }
}

rule "r037" {
  when     = "((limb.foot_shape == 'cavus' && (limb.subtalar_inversion >= deg(25) && limb.foot_shape == 'planus')) && limb.knee_extension > deg(9))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "trimline" { favour = ["through"] }
  advise "closure" { favour = ["straps"] }
}

rule "r038" {
  when     = "(((limb.quadriceps_power < muscle_power('5') || !(limb.wound || limb.hip_extensor_power < muscle_power('2-'))) && limb.posture_total > 3) && limb.leg_length >= mm(600))"
  unless   = "finding.f08"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { favour = ["spring"] }
}

rule "r039" {
  when     = "((limb.posture_total > -9 || limb.posture_total > 3) || ((limb.swing_pattern == 'steppage' && limb.swing_pattern == 'steppage') || limb.ankle_plantarflexion < deg(70)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { favour = ["posterior"] }
}

rule "r040" {
  when     = "(((limb.knee_extension < deg(2) || limb.knee_extension >= deg(-19)) && limb.clonus) || limb.knee_extension < deg(-5))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "shell_side" { favour = ["anterior"] }
}

rule "r041" {
  when     = "((limb.wound || limb.hip_flexion <= deg(36)) || limb.hip_flexion <= deg(36))"
  unless   = "limb.foot_length > mm(300)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { never = ["free"] }
  advise "foot_plate" { favour = ["to_ball"] }
}

rule "r042" {
  when     = "((limb.posture_total > -6 || (limb.oedema && limb.ankle_plantarflexion >= deg(50))) || limb.oedema)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-5)" }
}

rule "r043" {
  when     = "(limb.wound && (finding.f11 || limb.plantarflexor_power < muscle_power('3+')))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { favour = ["later"] }
  advise "closure" { favour = ["buckle"] }
}

rule "r044" {
  when     = "(limb.popliteal_angle <= deg(90) || ((limb.knee_flexion <= deg(60) && (limb.plantarflexor_tone <= tone('2') || limb.swing_pattern == 'steppage')) || finding.f13))"
  unless   = "limb.plantarflexor_power > muscle_power('3+')"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "articulation" { favour = ["free"] }
}

rule "r045" {
  when     = "((limb.hamstring_tone <= tone('4') && limb.leg_length <= mm(500)) || (limb.heel_rises > 16 && limb.oedema))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "closure" { never = ["buckle"] }
  advise "articulation" { never = ["stop"] }
}

rule "r046" {
  when     = "(limb.leg_length > mm(600) || (limb.knee_extension >= deg(-19) && limb.ankle_plantarflexion < deg(40)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r053"]
  advise "foot_plate" { favour = ["short"] }
  advise "review" { never = ["later"] }
}

rule "r047" {
  when     = "(!(limb.hip_extensor_power <= muscle_power('3+') || limb.heel_rises >= 8) && limb.leg_length < mm(1100))"
  unless   = "limb.limb_load < kg(140)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r049"]
  advise "closure" { favour = ["straps"] }
}

rule "r048" {
  when     = "(((limb.heel_rises >= 24 || limb.hip_flexion >= deg(90)) && limb.ankle_dorsiflexion < deg(10)) && limb.swing_pattern == 'vaulting')"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["full"] }
}

rule "r049" {
  when     = "((limb.hip_extensor_power >= muscle_power('4-') || ((limb.subtalar_eversion < deg(20) && limb.tibial_torsion < deg(-16)) || limb.subtalar_eversion < deg(15))) || limb.subtalar_inversion < deg(30))"
  unless   = "limb.ankle_girth <= mm(365)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["to_ball"] }
  advise "articulation" { favour = ["none"] }
}

rule "r050" {
  when     = "((limb.hip_extensor_power <= muscle_power('1') || (limb.knee_extension < deg(2) && limb.heel_rises <= 28)) || (limb.subtalar_inversion > deg(25) && finding.f05))"
  unless   = "limb.popliteal_angle >= deg(30)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { never = ["to_ball"] }
  advise "strut_place" { favour = ["spiral"] }
}

rule "r051" {
  when     = "(limb.oedema || ((limb.ankle_dorsiflexion <= deg(-30) && finding.f19) || limb.hip_flexion < deg(18)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { favour = ["both"] }
  advise "strut_place" { favour = ["medial"] }
}

rule "r052" {
  when     = "!((finding.f09 || (limb.leg_length < mm(1100) && (limb.clonus || limb.calf_girth >= mm(450)))) && limb.quadriceps_power < muscle_power('4-'))"
  unless   = "limb.ankle_girth < mm(330)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "articulation" { favour = ["stop"] }
  advise "closure" { favour = ["none"] }
}

rule "r053" {
  when     = "(limb.plantarflexor_tone < tone('3') || (finding.f08 || ((finding.f11 || limb.subtalar_inversion < deg(25)) || limb.quadriceps_power < muscle_power('1'))))"
  unless   = "limb.ankle_plantarflexion <= deg(10)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { favour = ["posterior"] }
}

rule "r054" {
  when     = "(finding.f17 && (limb.tibial_torsion < deg(-4) || limb.clonus))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "shell_side" { never = ["anterior"] }
  advise "heel_raise" { aim = "mm(11)" }
}

rule "r055" {
  when     = "(!((limb.ankle_dorsiflexion >= deg(-30) && (limb.foot_length <= mm(280) || limb.limb_load < kg(120))) && limb.calf_girth < mm(450)) && limb.foot_shape in ['cavus', 'mixed'])"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { favour = ["spring"] }
  advise "heel_raise" { at_most = "mm(59)" }
}

rule "r056" {
  when     = "!(limb.hamstring_tone >= tone('3') && (limb.posture_total > -6 || limb.limb_load >= kg(140)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { favour = ["none"] }
  advise "trimline" { favour = ["behind"] }
}

rule "r057" {
  when     = "(limb.wound && (limb.popliteal_angle > deg(45) && limb.subtalar_inversion <= deg(10)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r061"]
  advise "shell_side" { favour = ["both"] }
  advise "cast_angle" { aim = "deg(-4)" }
}

rule "r058" {
  when     = "((limb.ankle_plantarflexion <= deg(40) && finding.f14) && (limb.limb_load <= kg(100) || limb.hip_extension > deg(20)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(15)" }
}

rule "r059" {
  when     = "(finding.f02 && !((limb.posture_total > 0 || limb.foot_shape == 'neutral') && !(limb.swing_pattern in ['circumduction', 'vaulting'] || limb.dorsiflexor_power >= muscle_power('2'))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "trimline" { favour = ["through"] }
}

rule "r060" {
  when     = "((limb.oedema && limb.heel_rises <= 12) && (limb.clonus || limb.limb_load > kg(140)))"
  unless   = "limb.leg_length <= mm(1000)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "heel_raise" { at_least = "mm(10)" }
}

rule "r061" {
  when     = "(!(limb.swing_pattern in ['usual', 'drop'] && limb.leg_length >= mm(500)) && limb.hip_extension >= deg(0))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "closure" { favour = ["laces"] }
  advise "shell_side" { favour = ["posterior"] }
}

rule "r062" {
  when     = "((limb.wound || !(finding.f04 && finding.f03)) && (limb.ankle_dorsiflexion > deg(20) && limb.quadriceps_power > muscle_power('5-')))"
  unless   = "limb.sensation in ['intact', 'reduced']"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "articulation" { favour = ["free"] }
  advise "shell_side" { favour = ["both"] }
}

rule "r063" {
  when     = "((limb.sensation == 'absent' && (finding.f15 || limb.plantarflexor_power > muscle_power('1'))) || (finding.f07 || limb.calf_girth <= mm(500)))"
  unless   = "limb.ankle_plantarflexion > deg(70)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { favour = ["both"] }
}

rule "r064" {
  when     = "((limb.tibial_torsion > deg(-28) || finding.f12) && finding.f01)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r072"]
  advise "heel_raise" { aim = "mm(45)" }
}

rule "r065" {
  when     = "(((limb.sensation in ['absent', 'intact'] && limb.limb_load > kg(100)) || limb.knee_flexion >= deg(40)) || limb.knee_extension >= deg(-5))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r070"]
  advise "closure" { favour = ["buckle"] }
  advise "articulation" { favour = ["stop"] }
}

rule "r066" {
  when     = "(limb.foot_shape == 'neutral' && (limb.dorsiflexor_power > muscle_power('5-') || (finding.f08 || limb.subtalar_eversion < deg(25))))"
  unless   = "limb.wound"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { favour = ["soon"] }
}

rule "r067" {
  when     = "(!(limb.clonus && limb.sensation in ['reduced', 'absent']) || (limb.plantarflexor_tone >= tone('3') || limb.swing_pattern == 'steppage'))"
  unless   = "limb.heel_rises > 8"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { never = ["thin"] }
  advise "cast_angle" { aim = "deg(-17)" }
}

rule "r068" {
  when     = "((limb.swing_pattern == 'drop' && limb.foot_shape in ['planus', 'cavus']) && (limb.skin in ['intact', 'fragile'] && finding.f11))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r073"]
  advise "padding" { favour = ["thin"] }
  advise "articulation" { favour = ["stop"] }
}

rule "r069" {
  when     = "((finding.f01 && limb.sensation in ['absent', 'intact']) && limb.plantarflexor_power < muscle_power('2+'))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "padding" { never = ["none"] }
  advise "closure" { never = ["slip_on"] }
}

rule "r070" {
  when     = "(!((limb.wound || limb.ankle_plantarflexion > deg(60)) && limb.limb_load >= kg(20)) && (limb.knee_extension >= deg(-12) || finding.f08))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r075"]
  advise "strut_place" { favour = ["lateral"] }
  advise "closure" { favour = ["none"] }
}

rule "r071" {
  when     = "((limb.ankle_plantarflexion >= deg(60) && limb.hip_extension > deg(20)) || ((limb.knee_extension < deg(-26) || limb.ankle_plantarflexion > deg(30)) || limb.tibial_torsion > deg(32)))"
  unless   = "limb.skin == 'broken'"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { favour = ["none"] }
  advise "articulation" { never = ["spring"] }
}

rule "r072" {
  when     = "!(limb.skin == 'intact' || (limb.foot_length > mm(300) && limb.subtalar_eversion > deg(10)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-16)" }
}

rule "r073" {
  when     = "(limb.knee_flexion > deg(20) || !(limb.tibial_torsion >= deg(44) && (limb.swing_pattern in ['circumduction', 'vaulting'] || limb.sensation in ['reduced', 'absent'])))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r079"]
  advise "shell_side" { favour = ["posterior"] }
}

rule "r074" {
  when     = "((limb.foot_length <= mm(200) && (finding.f10 && limb.calf_girth > mm(300))) && finding.f02)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r077"]
  advise "heel_raise" { at_least = "mm(7)" }
  advise "cast_angle" { aim = "deg(9)" }
}

rule "r075" {
  when     = "!(limb.popliteal_angle >= deg(30) && ((limb.skin in ['intact', 'fragile'] || (limb.skin == 'fragile' || limb.plantarflexor_power > muscle_power('2-'))) || limb.oedema))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-2)" }
}

rule "r076" {
  when     = "(limb.hip_flexion <= deg(90) || (limb.ankle_dorsiflexion >= deg(-10) && finding.f12))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["posterior"] }
}

rule "r077" {
  when     = "(((limb.skin == 'intact' && finding.f15) && (limb.posture_total <= 6 && finding.f17)) && limb.subtalar_eversion >= deg(25))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "trimline" { favour = ["behind"] }
}

rule "r078" {
  when     = "((limb.skin == 'fragile' || finding.f06) || limb.hip_flexion > deg(54))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(1)" }
  advise "closure" { favour = ["none"] }
}

rule "r079" {
  when     = "!(limb.clonus || (limb.clonus || limb.subtalar_inversion >= deg(25)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "review" { favour = ["later"] }
  advise "padding" { favour = ["thin"] }
}

rule "r080" {
  when     = "(finding.f18 || !(finding.f12 || (finding.f18 || (limb.knee_extension > deg(-26) || limb.clonus))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "trimline" { favour = ["through"] }
  advise "shell_side" { never = ["both"] }
}

rule "r081" {
  when     = "((limb.quadriceps_power > muscle_power('2+') || limb.heel_rises < 12) && (limb.oedema && finding.f00))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { favour = ["later"] }
  advise "cast_angle" { aim = "deg(-12)" }
}

rule "r082" {
  when     = "((limb.limb_load < kg(80) && limb.wound) && (limb.swing_pattern == 'usual' || limb.wound))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "heel_raise" { at_least = "mm(1)" }
  advise "closure" { favour = ["slip_on"] }
}

rule "r083" {
  when     = "((limb.knee_flexion < deg(40) && limb.dorsiflexor_power > muscle_power('5')) || limb.wound)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { favour = ["spiral"] }
  advise "shell_side" { never = ["posterior"] }
}

rule "r084" {
  when     = "((limb.hip_extensor_power <= muscle_power('5-') || limb.plantarflexor_power < muscle_power('4-')) && limb.sensation == 'reduced')"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { favour = ["soon"] }
  advise "trimline" { never = ["through"] }
}

rule "r085" {
  when     = "((finding.f09 || limb.clonus) && finding.f15)"
  unless   = "finding.f14"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "cast_angle" { at_most = "deg(10)" }
  advise "strut_place" { never = ["posterior"] }
}

rule "r086" {
  when     = "(limb.knee_flexion <= deg(140) || (limb.foot_shape in ['planus', 'cavus'] && (limb.dorsiflexor_power < muscle_power('5-') || limb.hip_extension >= deg(30))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { never = ["posterior"] }
  advise "padding" { never = ["thick"] }
}

rule "r087" {
  when     = "(limb.heel_rises < 24 && (limb.clonus || !(limb.plantarflexor_tone <= tone('1') || (limb.subtalar_eversion >= deg(30) || finding.f09))))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { favour = ["lateral"] }
}

rule "r088" {
  when     = "((limb.popliteal_angle < deg(15) || limb.popliteal_angle <= deg(60)) || limb.heel_rises < 28)"
  unless   = "limb.leg_length >= mm(1000)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { favour = ["medial"] }
}

rule "r089" {
  when     = "((limb.hip_extensor_power < muscle_power('2+') && limb.swing_pattern == 'steppage') && limb.tibial_torsion >= deg(8))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "review" { favour = ["soon"] }
  advise "articulation" { favour = ["none"] }
}

rule "r090" {
  when     = "(limb.wound || (limb.ankle_plantarflexion < deg(10) && limb.hip_flexion > deg(126)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "strut_place" { favour = ["spiral"] }
  advise "trimline" { never = ["behind"] }
}

rule "r091" {
  when     = "(limb.calf_girth < mm(400) && (!((finding.f15 || limb.swing_pattern == 'circumduction') || limb.clonus) || limb.wound))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { favour = ["thin"] }
}

rule "r092" {
  when     = "(limb.popliteal_angle > deg(45) || ((limb.heel_rises < 24 && limb.quadriceps_power <= muscle_power('3')) && (finding.f01 || limb.knee_flexion >= deg(80))))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(40)" }
}

rule "r093" {
  when     = "!((!(limb.foot_length < mm(240) || limb.plantarflexor_power >= muscle_power('2-')) || limb.knee_extension < deg(-19)) || (limb.subtalar_eversion < deg(20) || finding.f02))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(32)" }
}

rule "r094" {
  when     = "((limb.tibial_torsion <= deg(-28) && limb.hip_extensor_power <= muscle_power('2')) && limb.swing_pattern in ['circumduction', 'vaulting'])"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  overrides = ["r095"]
  advise "cast_angle" { aim = "deg(4)" }
  advise "heel_raise" { at_least = "mm(14)" }
}

rule "r095" {
  when     = "((limb.posture_total < 9 || (finding.f12 || (limb.swing_pattern in ['drop', 'circumduction'] && limb.wound))) && finding.f18)"
  unless   = "finding.f01"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "shell_side" { never = ["anterior"] }
}

rule "r096" {
  when     = "((limb.popliteal_angle < deg(45) && limb.popliteal_angle >= deg(45)) || finding.f16)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["posterior"] }
  advise "padding" { favour = ["none"] }
}

rule "r097" {
  when     = "(limb.plantarflexor_power >= muscle_power('3') && (((limb.hip_flexion >= deg(90) || limb.plantarflexor_tone <= tone('4')) || limb.swing_pattern in ['steppage', 'usual']) || limb.foot_shape in ['planus', 'cavus']))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "trimline" { favour = ["in_front"] }
}

rule "r098" {
  when     = "!((limb.posture_total >= -6 && limb.foot_shape in ['planus', 'cavus']) || limb.swing_pattern == 'steppage')"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "review" { never = ["later"] }
}

rule "r099" {
  when     = "!(limb.wound || !(((limb.calf_girth <= mm(450) || limb.hip_extensor_power <= muscle_power('5-')) && limb.calf_girth <= mm(300)) && limb.sensation == 'reduced'))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "cast_angle" { aim = "deg(-1)" }
}

rule "r100" {
  when     = "!(((limb.hip_extension < deg(-20) && limb.dorsiflexor_power > muscle_power('2')) && limb.subtalar_inversion > deg(10)) && (limb.hip_extension <= deg(20) || limb.ankle_girth >= mm(365)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "trimline" { favour = ["behind"] }
  advise "cast_angle" { at_least = "deg(-16)" }
}

rule "r101" {
  when     = "!((((limb.sensation == 'reduced' && limb.sensation in ['reduced', 'absent']) && limb.tibial_torsion <= deg(32)) && finding.f16) || limb.ankle_dorsiflexion > deg(-30))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r108"]
  advise "trimline" { favour = ["through"] }
}

rule "r102" {
  when     = "(((limb.plantarflexor_power < muscle_power('2+') && limb.ankle_plantarflexion >= deg(50)) && limb.plantarflexor_tone > tone('3')) || limb.limb_load > kg(120))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  overrides = ["r111"]
  advise "cast_angle" { aim = "deg(-15)" }
  advise "padding" { favour = ["none"] }
}

rule "r103" {
  when     = "(limb.knee_flexion >= deg(40) || ((limb.hamstring_tone > tone('1') && limb.foot_shape == 'mixed') && limb.hip_extension > deg(0)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { never = ["stop"] }
  advise "padding" { favour = ["thin"] }
}

rule "r104" {
  when     = "!(limb.quadriceps_power <= muscle_power('2+') && (limb.swing_pattern in ['vaulting', 'steppage'] || limb.ankle_girth <= mm(295)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "padding" { never = ["thin"] }
}

rule "r105" {
  when     = "!(limb.hip_extensor_power > muscle_power('4') && (limb.knee_flexion <= deg(60) && limb.skin in ['intact', 'fragile']))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { never = ["short"] }
}

rule "r106" {
  when     = "(!((limb.oedema && finding.f19) && limb.limb_load >= kg(140)) && (limb.knee_extension > deg(-12) || limb.knee_flexion > deg(100)))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["short"] }
}

rule "r107" {
  when     = "((limb.hip_flexion < deg(126) || (limb.plantarflexor_tone >= tone('1') || (limb.ankle_girth > mm(190) || limb.knee_extension <= deg(-19)))) && limb.popliteal_angle > deg(105))"
  unless   = "limb.clonus"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "shell_side" { never = ["both"] }
  advise "padding" { favour = ["thin"] }
}

rule "r108" {
  when     = "((finding.f05 && (limb.knee_flexion > deg(140) || finding.f14)) && (limb.popliteal_angle > deg(105) && limb.calf_girth < mm(450)))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { never = ["later"] }
  advise "heel_raise" { at_least = "mm(16)" }
}

rule "r109" {
  when     = "(((limb.knee_flexion > deg(20) || finding.f12) && limb.hip_extension >= deg(0)) && finding.f01)"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "closure" { never = ["laces"] }
}

rule "r110" {
  when     = "(limb.ankle_dorsiflexion <= deg(30) || (limb.foot_shape in ['planus', 'cavus'] && (limb.quadriceps_power < muscle_power('4+') || limb.tibial_torsion >= deg(32))))"
  unless   = "limb.dorsiflexor_power < muscle_power('4+')"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(20)" }
}

rule "r111" {
  when     = "(limb.hip_flexion < deg(54) || (limb.leg_length < mm(1100) || finding.f11))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["short"] }
  advise "padding" { favour = ["none"] }
}

rule "r112" {
  when     = "(limb.clonus || ((finding.f03 || limb.wound) || (limb.sensation in ['intact', 'reduced'] && limb.subtalar_inversion < deg(35))))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "trimline" { favour = ["behind"] }
  advise "cast_angle" { at_most = "deg(6)" }
}

rule "r113" {
  when     = "(limb.sensation == 'intact' || (limb.plantarflexor_power >= muscle_power('2-') || (finding.f07 && limb.limb_load < kg(100))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "foot_plate" { favour = ["to_ball"] }
}

rule "r114" {
  when     = "((limb.hip_flexion < deg(36) || !(limb.ankle_plantarflexion < deg(60) || limb.calf_girth <= mm(250))) && (limb.foot_shape in ['neutral', 'planus'] || limb.swing_pattern in ['usual', 'drop']))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { aim = "mm(45)" }
  advise "closure" { favour = ["none"] }
}

rule "r115" {
  when     = "((finding.f09 && (finding.f10 || limb.heel_rises >= 8)) && (limb.tibial_torsion <= deg(-16) || limb.foot_shape in ['mixed', 'neutral']))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "strut_place" { favour = ["medial"] }
}

rule "r116" {
  when     = "((limb.wound && ((limb.wound || limb.tibial_torsion >= deg(-16)) && limb.calf_girth > mm(400))) && finding.f08)"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "articulation" { favour = ["spring"] }
}

rule "r117" {
  when     = "((((limb.hip_extension >= deg(0) || finding.f11) && limb.sensation == 'reduced') && limb.limb_load < kg(100)) || limb.oedema)"
  unless   = "finding.f16"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "review" { never = ["soon"] }
  advise "heel_raise" { aim = "mm(47)" }
}

rule "r118" {
  when     = "((limb.foot_length >= mm(200) && limb.plantarflexor_power < muscle_power('3')) && (limb.foot_shape == 'planus' && (limb.hamstring_tone > tone('1+') && limb.popliteal_angle < deg(45))))"
  because  = "It was drawn."
  strength = "conditional"
  basis    = "from_memory"
  advise "closure" { favour = ["slip_on"] }
  advise "padding" { favour = ["thin"] }
}

rule "r119" {
  when     = "(finding.f09 || ((limb.foot_shape in ['planus', 'cavus'] && limb.plantarflexor_power >= muscle_power('3+')) || (limb.ankle_plantarflexion >= deg(10) || limb.ankle_plantarflexion >= deg(60))))"
  because  = "It was drawn."
  strength = "strong"
  basis    = "from_memory"
  advise "heel_raise" { at_most = "mm(56)" }
  advise "foot_plate" { never = ["to_ball"] }
}

caution "c00" {
  level = "precaution"
  when  = "((limb.tibial_torsion <= deg(-16) && limb.quadriceps_power < muscle_power('2-')) && limb.hip_extension <= deg(30))"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c01" {
  level = "precaution"
  when  = "((limb.calf_girth <= mm(550) || limb.ankle_plantarflexion > deg(70)) || limb.ankle_girth < mm(365))"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c02" {
  level = "precaution"
  when  = "(limb.plantarflexor_power >= muscle_power('2-') && (finding.f10 && limb.plantarflexor_tone >= tone('4')))"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c03" {
  level = "precaution"
  when  = "(limb.oedema && (limb.wound && limb.hip_flexion > deg(18)))"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c04" {
  level = "precaution"
  when  = "((limb.posture_total > 9 || limb.quadriceps_power <= muscle_power('2+')) && limb.oedema)"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c05" {
  level = "precaution"
  when  = "((limb.ankle_plantarflexion >= deg(20) || limb.oedema) && finding.f15)"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c06" {
  level = "precaution"
  when  = "((limb.subtalar_inversion >= deg(5) || limb.plantarflexor_tone <= tone('4')) || limb.heel_rises < 16)"
  says  = "It was drawn."
  basis = "from_memory"
}

caution "c07" {
  level = "precaution"
  when  = "((limb.ankle_girth > mm(295) || limb.swing_pattern == 'usual') && finding.f17)"
  says  = "It was drawn."
  basis = "from_memory"
}

# What else has to be said.

caution "stiff_cavovarus" {
  level = "precaution"
  when  = "finding.varus_stiff"
  says  = "The heel stands in varus and the block test is ${limb.block_test}: the hindfoot is stiff, and no device will straighten it."
  act   = "Ask for a surgical opinion if the foot hurts, tips or breaks down; cast it as it stands."
  basis = "published"
  cites = ["block_test"]
}

caution "insensate_high_arch" {
  level = "precaution"
  when  = "finding.limb_safety.insensate && finding.high_arch"
  says  = "A high arch stands on heel, outer border and metatarsal heads, and sensation is ${limb.protective_sensation}: these places carry what the arch does not."
  act   = "Fill the arch, relieve the loaded places, and look at the sole itself at every review."
  basis = "common_practice"
}

caution "equinus_in_the_forefoot" {
  level = "note"
  when  = "finding.high_arch && finding.limb_safety.equinus"
  says  = "The foot stops at ${limb.ankle_dorsiflexion_knee_extended}. In a high-arched foot much of that can be the forefoot hanging from the hindfoot: of 80 such feet dorsiflexion at the ankle itself was less than usual in 18 only."
  act   = "Look at the ankle with the forefoot covered, and build up under the heel only for what is left."
  basis = "published"
  cites = ["cavovarus_equinus_2015"]
}

caution "position_sense_is_part_of_it" {
  level = "note"
  when  = "limb.ankle_proprioception in ['reduced', 'absent']"
  says  = "Position sense at the ankle is ${limb.ankle_proprioception}. Walking suffers from shape, weakness and feeling together, and a device holds only the first two."
  act   = "Watch balance in the device before it goes home; a stick and light in the house may do as much."
  basis = "published"
  cites = ["nonnekes_2021"]
}

caution "it_goes_on" {
  level = "note"
  when  = "person.progression == 'progressive'"
  says  = "The condition progresses. What is right now is not right for good, and hands follow feet."
  act   = "Grade the same muscles, the block test and the hands again at each review; build what can be stiffened or closed otherwise later."
  basis = "common_practice"
}

caution "steps_for_adults" {
  level = "note"
  when  = "!finding.limb_safety.growing && finding.varus_heel"
  says  = "For adults there is a step-wise algorithm that sets surgery beside orthoses and shoes, partly on evidence and otherwise on practice. Its steps were not read, so they are not in these rules."
  act   = "Read it before the foot is called unfit for surgery."
  basis = "published"
  cites = ["nonnekes_2021"]
}

# Power, each group graded against gravity, before fatigue. 0 nothing, 1 a flicker without movement; 2- part and
# 2 full range with gravity eliminated, 2+ under half range against gravity; 3- over half and 3 full range against
# gravity, 3+ gives way to slight resistance; 4- slight to moderate, 4 moderate, 4+ moderate to strong resistance;
# 5- barely weak, 5 full. The heel-rise test of the plantarflexors stands apart: it loads the limb with the body's
# weight, and its count does not translate into a grade.

# Manual muscle test

measure "hip_flexor_power" {
  of          = "limb"
  label       = "Power, hip flexors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Sitting, or supine where weak; lift the thigh; resistance above the knee."
}

measure "hip_extensor_power" {
  of          = "limb"
  label       = "Power, hip extensors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Prone, knee straight; lift the thigh with the pelvis held; resistance above the knee. Side-lying where weak."
}

measure "hip_abductor_power" {
  of          = "limb"
  label       = "Power, hip abductors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Side-lying on the other side; lift the straight leg without turning it; resistance above the ankle. Supine where weak."
}

measure "hip_adductor_power" {
  of          = "limb"
  label       = "Power, hip adductors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Side-lying on this side, other leg held up; lift the leg to it; resistance above the knee."
}

measure "quadriceps_power" {
  of          = "limb"
  label       = "Power, quadriceps"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Sitting, thigh held; straighten the knee; resistance at the front of the ankle. Side-lying where weak."
}

measure "hamstring_power" {
  of          = "limb"
  label       = "Power, knee flexors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Prone; bend the knee; resistance behind the ankle. Side-lying where weak."
}

measure "dorsiflexor_power" {
  of          = "limb"
  label       = "Power, dorsiflexors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Sitting or supine, heel supported; dorsiflex with inversion, toes loose; resistance on the top of the foot."
}

measure "plantarflexor_power" {
  of          = "limb"
  label       = "Power, plantarflexors, against the hand"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Prone, foot over the edge; plantarflex; resistance under the forefoot. Weak calves feel strong against a hand: in anyone who can stand, count heel rises as well."
}

measure "invertor_power" {
  of          = "limb"
  label       = "Power, invertors (tibialis posterior)"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Side-lying on this side, ankle plantarflexed; turn the foot in, toes loose; resistance at the medial forefoot."
}

measure "evertor_power" {
  of          = "limb"
  label       = "Power, evertors (peronei)"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Side-lying on the other side; turn the foot out; resistance at the lateral forefoot."
}

measure "hallux_extensor_power" {
  of          = "limb"
  label       = "Power, long extensor of the great toe"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Supine, ankle held; extend the great toe; resistance on the last phalanx."
}

measure "toe_flexor_power" {
  of          = "limb"
  label       = "Power, toe flexors"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Supine, ankle held; curl the toes; resistance under the last phalanges."
}

measure "toe_extensor_power" {
  of          = "limb"
  label       = "Power, long extensor of the lesser toes"
  scale       = "muscle_power"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published; between two raters allow a whole grade, that is three steps; raters agree less, 48 against 64 %, where 4+ is used"
  cites       = ["mrc_1976", "muscle_test_agreement", "muscle_test_thirds", "muscle_test_4plus"]
  how         = "Supine, ankle held; extend the lesser toes; resistance on top of the first phalanges."
}

measure "ankle_selective_control" {
  of          = "limb"
  label       = "Selective control of the ankle"
  one_of      = ["isolated", "with_other_joints", "none"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Sitting, knee straight; dorsiflex without bending hip or knee, and let go again."
}

# Moments, where a dynamometer is at hand: force times the distance from the ankle's axis to the pad.

measure "plantarflexor_moment" {
  of          = "limb"
  label       = "Plantarflexor moment, greatest own effort"
  unit        = "N.m"
  plausible   = [0, 300]
  taken       = "lying"
  error_basis = "none is published in newton metres; hand-held dynamometers have a standard error of 8 to 28 % of the reading, and between raters ICC 0.61 at the ankle"
  cites       = ["hand_held_dynamometry"]
  how         = "Prone or supine, knee straight, shank held still, ankle at plantigrade or as near as it goes; dynamometer under the metatarsal heads; greatest of three efforts held for three seconds. Force times the distance from the axis through the malleoli to the pad. In a strong calf a hand gives way first: use a fixed dynamometer."
}

# Heel rises in standing

measure "heel_rises" {
  of          = "limb"
  label       = "Single-leg heel rises, full height"
  count       = true
  plausible   = [0, 100]
  taken       = "standing"
  error       = 4.5
  error_basis = "the smallest real change of 6.3 rises between days divided by the square root of 2"
  cites       = ["hebert_losier_2017", "lunsford_1995", "jan_2005"]
  how         = "Standing on this leg, knee straight, fingertips on a wall; count rises of full height, one in two seconds, until height is lost. 0 where none is full; cannot stand on the leg: not recorded."
}

measure "heel_rise_height" {
  of          = "limb"
  label       = "Height of the best single-leg heel rise"
  one_of      = ["none", "part", "full"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  cites       = ["hislop_montgomery"]
  how         = "In the same test, against a single rise on both feet; the hindfoot should turn inwards."
}

# Level of a lesion of the spinal cord or its roots

measure "spinal_motor_level" {
  of          = "limb"
  label       = "Spinal motor level of this limb"
  one_of      = ["thoracic", "high_lumbar", "low_lumbar", "sacral"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "In spina bifida: the lowest level with useful power, as the spinal service recorded it; the two limbs can differ. Low lumbar: hip extensors, plantarflexors and dorsiflexors are weak."
}

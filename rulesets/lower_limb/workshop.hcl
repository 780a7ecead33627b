# The device itself, measured in the workshop: of the device as it is designed or made for this limb. Lengths with
# callipers or steel rule on the finished part, or from the drawing before it is made.

# Foot shell and shank shell

measure "device_thickness_under_ball" {
  of          = "limb"
  label       = "Thickness of the device under the ball"
  unit        = "mm"
  plausible   = [0, 25]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Callipers on the foot plate under the metatarsal heads, lining included, without the shoe. The other side may need as much under its sole."
}

measure "shank_shell_height" {
  of          = "limb"
  label       = "Height of the shank shell, edge to edge"
  unit        = "mm"
  plausible   = [10, 450]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Along the middle of the shell, from the lower to the upper edge that touches the limb. Of a strap it is the width."
}

measure "shank_contact_height" {
  of          = "limb"
  label       = "Height of the middle of the shank shell"
  unit        = "mm"
  plausible   = [50, 550]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Floor to the middle of the area that presses on the shank, standing in the device without the shoe. Less the height of the ankle's axis it is the lever of the shell."
}

measure "shank_shell_half_arc" {
  of          = "limb"
  label       = "Half of the arc that the shank shell wraps"
  unit        = "deg"
  plausible   = [5, 180]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Length of the shell round the limb divided by the girth there, times 360, halved. A shell round half of the shank has 90."
}

measure "strap_width" {
  of          = "limb"
  label       = "Width of the strap"
  unit        = "mm"
  plausible   = [10, 120]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Width that bears on the limb, pad included where it is stiff enough to spread the load."
}

# Strut, as a beam between two rigid shells. Where there are two struts record one and say so in the order.

measure "strut_length" {
  of          = "limb"
  label       = "Free length of the strut"
  unit        = "mm"
  plausible   = [10, 450]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Along the strut, from where it leaves the foot shell to where it enters the shank shell: only the part that bends."
}

measure "strut_width" {
  of          = "limb"
  label       = "Width of the strut"
  unit        = "mm"
  plausible   = [5, 120]
  taken       = "workshop"
  error_basis = "none is published that we know of"
  how         = "Callipers at the narrowest place of the free length."
}

measure "strut_thickness" {
  of          = "limb"
  label       = "Thickness of the strut"
  unit        = "mm"
  plausible   = [0.3, 20]
  taken       = "workshop"
  error_basis = "none is published that we know of; stiffness goes with the third power, so a tenth of a millimetre in four is 7.5 % of it"
  how         = "Micrometer at three places of the free length; the mean. Without paint and cover."
}

measure "strut_layers" {
  of          = "limb"
  label       = "Layers of the strut"
  count       = true
  plausible   = [1, 80]
  taken       = "workshop"
  error_basis = "counted in the lay-up, no measurement error"
  how         = "Layers through the thickness of the free length, as laid up."
}

measure "strut_modulus" {
  of          = "limb"
  label       = "Bending modulus of the strut's laminate"
  unit        = "GPa"
  plausible   = [1, 250]
  taken       = "workshop"
  error_basis = "none is published for a laminate made by hand; fibres along one direction are given from 103 to 181 GPa"
  cites       = ["carbon_modulus", "carbon_modulus_prepreg"]
  how         = "From a bending test of a strip of the workshop's own laminate, along the strut. A supplier's figure for the fibre or for pull is not it: then leave it out."
}

# Stiffness as measured: a figure without the way it was taken says little.

measure "bench_stiffness" {
  of          = "limb"
  label       = "Stiffness of the finished device about the ankle"
  unit        = "N.m/deg"
  plausible   = [0, 30]
  taken       = "workshop"
  error_basis = "no standard error is published; on five benches the same 13 devices differed by a median of 1.03 N.m/deg, on the four with a fixture by 0.52"
  cites       = ["shuman_2023", "shuman_2021", "totah_2019"]
  how         = "Moment into dorsiflexion for each degree, foot plate held, device without shoe, over the angles that are walked through. Record how it was tested as well."
}

measure "bench_method" {
  of          = "limb"
  label       = "How the stiffness was tested"
  one_of      = ["motor_in_fixture", "weights_in_fixture", "by_hand_with_gauge", "worked_out", "not_known"]
  taken       = "workshop"
  error_basis = "a record of what was done, not a measurement"
  cites       = ["shuman_2023"]
  how         = "Whether a fixture held the device, and what loaded it; worked_out where the figure comes from a formula, not from a test."
}

# Crouch in a child: the first version.


# Written for the clinic.
ruleset "a" {
  title="A"
  # who answers for it

  publisher = "Clinic"

  author = [

    "senior orthotist",   # by role
    # and

    "reviewer"

  ]
  /* kept   
     as it is */
  purpose = "p" // why
}
// the end, without a line end
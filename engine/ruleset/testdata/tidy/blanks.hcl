rule "a" {


  when= "limb.x   <  deg(5)"
  because   =   "Dorsiflexion of ${  limb.x }."   



	strength = "strong" # GRADE
  basis = "common_practice"  # no source
  advise "shell_side" { favour="anterior" }

}
# About the next one.
caution "b" {
 level="note"
   when = "true"
}



citation "c" { text = "C." }
citation "d" {
  text = "D."

}   # the last



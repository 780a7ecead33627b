caution "a" {
      says = <<EOT
  Two lines,  


    the blanks in them   kept.
EOT
  act = <<-EOT
      Look  
        again.
      EOT


  when = <<EOT
limb.x == "a"
  && true
EOT
}

# What changes with time, and who puts the device on.

rule "review_while_it_progresses" {
  when     = "person.progression == 'progressive'"
  because  = "The condition progresses: power, feeling and shape are looked at again within half a year. The interval is a starting value without a source, for the clinic to set."
  strength = "conditional"
  basis    = "common_practice"

  advise "review_interval" { at_most = "weeks(26)" }
}

rule "easy_to_put_on" {
  when     = "finding.hands_weak && person.help_available != 'each_time'"
  because  = "Hands: ${person.hand_function}, help: ${person.help_available}. A low foot shell is easier to put on than a wrapped one. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "foot_shell" { favour = "low" }
}

# No source says after how long.

clinician_decides "review_interval" {
  because  = "The guideline asks for a new assessment because the best device can change in any phase after a stroke; it gives no interval."
  consider = ["Onset ${person.onset}, course ${person.progression}: sooner while recovery goes on", "Sooner after an injection or when a light device was tried first", "A date is set before the person leaves, with the measure that is repeated"]
}

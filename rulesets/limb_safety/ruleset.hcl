# What must be seen to before any device touches a leg, and what goes with it.

ruleset "limb_safety" {
  title      = "Safety of a limb in a device"
  version    = "1.0.0"
  status     = "draft"
  publisher  = "crus starter rulesets (no clinic has adopted it)"
  author     = ["starter set"]
  purpose    = "Says what to refer, what to stop and what to watch before a device touches a leg."
  review_by  = "2027-11-30"
  vocabulary = "lower_limb@1"
}

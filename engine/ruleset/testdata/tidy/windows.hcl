case "windows" {

	basis = "common_practice"
	given {
		device_for = ["left"]


		left { 
			plantarflexor_power = "3" 
		}
	}
	expect "left" {
		choices = {

			shell_side="anterior",
			closure   ="unanswered"
		}
	}
}

case "a" {
}

case "b" {
}

case "c" {
}

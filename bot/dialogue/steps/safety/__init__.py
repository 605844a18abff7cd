"""What protects first: emergencies, doubt whether it is one, and places where nobody stands."""

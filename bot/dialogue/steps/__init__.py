"""What is answered, by subject: the walk, what is told or asked, frames, home, visits, safety."""

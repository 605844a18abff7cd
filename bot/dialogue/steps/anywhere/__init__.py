"""What holds at every step: command words, manners, limits, and questions put once more."""

"""What holds at every step: manners, limits, when it was heard, questions put once more."""

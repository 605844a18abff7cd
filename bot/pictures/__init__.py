"""Pictures that the bot sends: marked frames and cards."""

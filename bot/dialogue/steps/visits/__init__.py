"""Visits before anybody stands at the water: the day, the way, the card, the text for home."""

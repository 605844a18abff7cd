"""Numbers that are trained: the recipes, and what they write."""

"""What people ask beside the walk, and how it is answered."""

"""What is told in free words at the water, and when it was seen: kept, put right, answered."""

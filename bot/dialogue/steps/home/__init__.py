"""At home: the frames of the day gone through, shared ones and told ones."""

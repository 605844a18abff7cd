"""Sun times of a place and the zone that its clock keeps."""

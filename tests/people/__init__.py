"""What people wrote against what is read, heard and answered, half by half."""

"""What can be measured on a shared frame; pictures in, numbers out."""

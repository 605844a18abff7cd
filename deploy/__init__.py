"""Scripts to set up, try, test and measure Linn; not part of the installed package."""

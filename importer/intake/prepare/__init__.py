"""Preparing the picture of a page for reading: outline, turn, skew, scale, paper, rules, ink."""

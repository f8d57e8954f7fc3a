"""Figures that anyone can print again: errors against truth, and costs as ratios within one run."""

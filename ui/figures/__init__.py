"""Drawn movements: what to do, as keyframes (data) and as lines (painting)."""

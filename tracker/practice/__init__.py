"""A whole session from a plan: what comes next, what is refused and why. No clock, no window."""

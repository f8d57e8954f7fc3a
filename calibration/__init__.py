"""From the samples of a set-up to a profile of the person, and the check of it."""

"""Where the head is and how it is turned: a perspective model of the person's own face."""

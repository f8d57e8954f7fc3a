"""What is told of sessions: one, by its figures; many in a folder, by person and over time."""

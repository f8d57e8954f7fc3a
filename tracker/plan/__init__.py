"""The plan: what a therapist has asked for, one readable file."""

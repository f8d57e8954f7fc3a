"""The therapist's desk: the sessions of many people, in a window or as text."""

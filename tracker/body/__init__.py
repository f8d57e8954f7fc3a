"""Shoulders and hands: from the landmarks of a body to the columns of a trace."""

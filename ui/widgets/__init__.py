"""Drawn parts of the pages."""

"""Exercises as data, with the counters and watchers they name."""

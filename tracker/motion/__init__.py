"""Motion: speeds, turning points and repetitions from unevenly spaced samples."""

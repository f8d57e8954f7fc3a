"""The frozen program: a folder that runs where there is no Python. Not part of a wheel."""

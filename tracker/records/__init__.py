"""The sessions of many people in a folder: found, indexed, put in order, compared over time."""

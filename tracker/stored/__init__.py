"""All that the program keeps of a person: what there is, a copy of it, and its deletion."""

"""A session: its steps, its engine, its journal, and the files made from it."""

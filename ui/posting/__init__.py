"""Sending sessions to a server of the clinic's: the only code of ours that opens a connection.

For clinics alone (``pip install turnpost[send]``). Nothing but ``ui.commands.send`` imports it,
and a frozen folder does not carry it; ``pyproject.toml`` holds both.
"""

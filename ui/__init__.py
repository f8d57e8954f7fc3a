"""The desktop program and the command line.

Modules of the command line import no Qt until a window is asked for.
"""

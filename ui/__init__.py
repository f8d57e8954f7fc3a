"""The desktop program and the command line. Command-line modules import no Qt until a window is asked for."""

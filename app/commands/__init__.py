"""What can be asked for on the command line: one file for each command."""

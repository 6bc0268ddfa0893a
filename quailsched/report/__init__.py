"""The season as words and as JSON values: what the command line prints and the window shows. No layout of widgets."""

"""The window: the only code that knows Qt. It shows what ``session`` and ``season`` say and calls ``edits``."""

"""Use cases without a window: open a farm, apply, undo, redo, give out its calendar, remember the last farm."""

"""The Setup view: places, people, batches and figures as tables, for the keyboard and the screen reader too."""

"""Taking in records from a table: the window that asks how it is written and shows what becomes of each row."""

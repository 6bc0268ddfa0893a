"""The Books view: what was counted, as measures in tables and charts."""

"""Tables that people keep (a hatch log, an egg log) as one change of a farm: text in, rows and their fates out.

From letters (``letters``) over cells (``grid``) and columns (``sheet``) to counts (``hatches``, ``eggs``, ``taking``).
No files: those are read by ``session.tables``; tables that are given out are in ``report.record_tables``.
"""

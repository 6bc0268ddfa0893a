"""Kinds of quail and what is known about them: figures, curves, their sources, cautions, plain sums.

Nothing here knows of a farm; a farm's own values come in through ``handbook.kind_with``.
"""

"""The Today view: what is to be done on a day, by person and place, ticked and counted where it is done.

``page`` works out what stands there and ``typed_count`` what is meant by a typed count, both without Qt; ``board`` lays
the cards out, ``steps`` changes the farm, ``view`` puts it together.
"""

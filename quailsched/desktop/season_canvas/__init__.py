"""The season as lanes of places. ``lanes``, ``scale``, ``geometry`` know no Qt; ``paint`` draws, ``canvas`` listens."""

"""Proposals: small changes of the plan that remove a clash. Pure; each has been checked over the whole farm."""

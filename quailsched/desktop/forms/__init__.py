"""Forms that add or change one record. Each ends in an edit of ``edits`` that goes through ``OpenFarm.apply``."""

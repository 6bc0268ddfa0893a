"""Recording counts, the list of them, and birds that part from their batch or join another."""

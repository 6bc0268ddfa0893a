"""The season and the chores on paper, and the season as a picture: always in the light colours."""

"""``python -m quailsched`` is the command ``quailsched``."""

import sys

from quailsched.cli import main

sys.exit(main())

"""Starts the program beside an accessibility bus of its own, lets a script read it there, and ends all it has started.

    xvfb-run -a dbus-run-session -- python bus_session.py LAUNCHER READER FARM FOUND

LAUNCHER is at-spi-bus-launcher, READER a Python that knows ``gi`` and Atspi, FARM the farm file to open. What
``bus_reader.py`` finds is written into the file FOUND as JSON, with the exit code of the program.
"""

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

_SECONDS = 60


def main(launcher: str, reader: str, farm: str, found_file: str) -> None:
    bus = subprocess.Popen([launcher, "--launch-immediately"], start_new_session=True)
    shown = {**os.environ, "QT_QPA_PLATFORM": "xcb", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1"}
    program = subprocess.Popen(
        [sys.executable, "-m", "quailsched", farm],
        env=shown,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )
    script = Path(__file__).with_name("bus_reader.py")
    try:
        read = subprocess.run(
            [reader, "-W", "ignore", str(script)], capture_output=True, text=True, timeout=_SECONDS, check=False
        )
        found = json.loads(read.stdout) if read.returncode == 0 else {"fault": read.stdout + read.stderr}
        if "fault" in found:
            program.terminate()
        said, _ = program.communicate(timeout=20)
        Path(found_file).write_text(json.dumps({**found, "code": program.returncode, "said": said}), encoding="utf-8")
    finally:
        program.kill()
        os.killpg(bus.pid, signal.SIGTERM)  # with the bus that it has started


if __name__ == "__main__":
    main(*sys.argv[1:])

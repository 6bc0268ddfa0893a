"""The shell scripts, run for real in a copy of the checkout; what they call of the system is stood in for."""

from __future__ import annotations

import os
import shutil
import subprocess
from dataclasses import dataclass, field
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
COMMANDS = [ROOT / "packaging" / "start", ROOT / "packaging" / "check", ROOT / ".ci" / "run"]
SCRIPTS = [*COMMANDS, ROOT / "packaging" / "setup.sh"]
LISTS = sorted((ROOT / "packaging" / "system-packages").glob("*.txt"))
REAL_TOOLS = ("awk", "cat", "cksum", "cp", "dirname", "mkdir", "mktemp", "readlink", "rm", "sh", "tail")

# Stands in for Python, as `python3` and, copied, as the environment's own. Logs what it installs.
FAKE_PYTHON = """#!/bin/sh
case $1 in
    -c) exit 0 ;;
    -) cat >/dev/null ;;
    -P) shift; printf '%s\\n' "$@"; exit 7 ;;
    -m)
        echo "$2" >>"$LOG"
        if [ "$2" = venv ]; then mkdir -p "$4/bin"; cp "$0" "$4/bin/python"; fi
        ;;
esac
"""
NO_PYTHON = "#!/bin/sh\nexit 1\n"
LOGGING = '#!/bin/sh\necho "apt-get $*" >>"$LOG"\n'
# A loader that knows every library of the lists but those named in $LACKING.
FAKE_LDCONFIG = """#!/bin/sh
cat "$LISTS"/*.txt | awk -v lacking=" $LACKING " '!/^#/ && !index(lacking, " " $1 " ") {
    print "\\t" $1 " (libc6,x86-64) => /lib/" $1
}'
"""


@dataclass
class Copy:
    """A copy of the checkout's packaging, and the few commands that it finds on its path."""

    root: Path
    bin: Path
    log: Path
    environment: dict[str, str] = field(default_factory=dict)

    def put(self, name: str, text: str) -> None:
        path = self.bin / name
        path.write_text(text, encoding="utf-8")
        path.chmod(0o755)

    def start(self, *words: str, cwd: Path | None = None, **environment: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [self.root / "packaging" / "start", *words],
            cwd=cwd or self.root,
            env={**self.environment, **environment},
            capture_output=True,
            text=True,
            check=False,
        )

    def installed(self) -> list[str]:
        """What was run to install something, since last asked."""
        lines = self.log.read_text(encoding="utf-8").splitlines() if self.log.exists() else []
        self.log.unlink(missing_ok=True)
        return lines


@pytest.fixture
def copy(tmp_path: Path) -> Copy:
    root = tmp_path / "my quail" / "check out"
    shutil.copytree(ROOT / "packaging", root / "packaging")
    shutil.copy(ROOT / "pyproject.toml", root)
    made = Copy(root, tmp_path / "bin", tmp_path / "log")
    made.bin.mkdir()
    for tool in REAL_TOOLS:
        found = shutil.which(tool)
        assert found
        (made.bin / tool).symlink_to(found)
    made.put("python3", FAKE_PYTHON)
    made.put("id", "#!/bin/sh\necho 0\n")
    made.put("apt-get", LOGGING)
    made.put("ldconfig", FAKE_LDCONFIG)
    lists = str(root / "packaging" / "system-packages")
    made.environment.update(PATH=str(made.bin), LOG=str(made.log), LISTS=lists, TMPDIR=str(tmp_path))
    return made


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
@pytest.mark.parametrize("shell", ["bash", "dash"])
def test_each_shell_script_is_sound_in_bash_and_in_a_plain_shell(script: Path, shell: str) -> None:
    if shell == "dash" and script.read_text(encoding="utf-8").startswith("#!/usr/bin/env bash"):
        shell = "bash"
    subprocess.run([shell, "-n", script], check=True)


@pytest.mark.parametrize("script", COMMANDS, ids=lambda path: path.name)
def test_each_command_can_be_run_as_it_is(script: Path) -> None:
    assert os.access(script, os.X_OK)


@pytest.mark.parametrize("path", LISTS, ids=lambda path: path.name)
def test_each_line_of_a_library_list_names_a_library_and_a_package(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    lines = [line.split() for line in text.splitlines() if not line.startswith("#")]
    assert lines
    assert all(len(words) == 2 and ".so." in words[0] for words in lines)


def test_start_passes_on_words_exit_code_and_the_current_directory(copy: Copy, tmp_path: Path) -> None:
    done = copy.start("clashes", "a farm.quail", "--json", cwd=tmp_path)
    assert done.returncode == 7
    assert done.stdout.splitlines() == ["-m", "quailsched", "clashes", "a farm.quail", "--json"]


def test_a_second_start_installs_nothing_and_says_nothing(copy: Copy) -> None:
    copy.start("--version")
    assert copy.installed() == ["venv", "pip"]
    done = copy.start("--version")
    assert copy.installed() == []
    assert done.stderr == ""


@pytest.mark.parametrize("name", ["pyproject.toml", "packaging/constraints.txt"])
def test_a_change_of_bounds_or_pins_is_installed_at_the_next_start(copy: Copy, name: str) -> None:
    copy.start("--version")
    copy.installed()
    with (copy.root / name).open("a", encoding="utf-8") as file:
        file.write("# changed\n")
    copy.start("--version")
    assert copy.installed() == ["venv", "pip"]


def test_a_checkout_that_was_moved_is_set_up_anew(copy: Copy) -> None:
    copy.start("--version")
    copy.installed()
    copy.root = copy.root.rename(copy.root.with_name("elsewhere"))
    copy.start("--version")
    assert copy.installed() == ["venv", "pip"]


def test_a_set_up_that_failed_is_tried_again(copy: Copy) -> None:
    copy.put("python3", FAKE_PYTHON.replace('echo "$2" >>"$LOG"', '[ "$2" != pip ] || exit 1'))
    failed = copy.start("--version")
    assert failed.returncode == 2
    assert "could not be installed" in failed.stderr
    copy.put("python3", FAKE_PYTHON)
    assert copy.start("--version").returncode == 7


def test_words_that_open_no_window_need_no_window_libraries(copy: Copy) -> None:
    copy.start("clashes", "x.quail", DISPLAY=":0", LACKING="libGL.so.1")
    assert copy.installed() == ["venv", "pip"]


def test_a_picture_gets_the_libraries_that_draw_and_none_for_a_screen(copy: Copy) -> None:
    copy.start("picture", "x.quail", "--out", "x.pdf", LACKING="libGL.so.1 libxcb-cursor.so.0")
    update, install, *rest = copy.installed()
    assert update == "apt-get -q update"
    assert install.endswith(" libgl1")
    assert rest == ["venv", "pip"]


def test_without_a_screen_no_window_library_is_installed(copy: Copy) -> None:
    copy.start(LACKING="libGL.so.1")
    assert copy.installed() == ["venv", "pip"]


@pytest.mark.parametrize("words", [(), ("x.quail",)])
def test_with_a_screen_a_window_gets_the_libraries_that_are_missing_and_no_others(
    copy: Copy, words: tuple[str, ...]
) -> None:
    copy.start(*words, DISPLAY=":0", LACKING="libGL.so.1 libxcb-cursor.so.0")
    update, install, *rest = copy.installed()
    assert update == "apt-get -q update"
    assert install.endswith(" libgl1 libxcb-cursor0")
    assert rest == ["venv", "pip"]


def test_without_root_the_one_command_to_run_is_printed(copy: Copy) -> None:
    copy.put("id", "#!/bin/sh\necho 1000\n")
    copy.put("sudo", "#!/bin/sh\nexit 1\n")
    for name in ("python3", "python3.11", "python3.12", "python3.13", "python3.14"):
        copy.put(name, NO_PYTHON)
    done = copy.start(DISPLAY=":0", LACKING="libEGL.so.1")
    assert done.returncode == 2
    assert done.stderr.splitlines()[-1].strip() == "sudo apt-get install -y python3 python3-venv libegl1"
    assert copy.installed() == []
    assert done.stdout == ""


def test_a_system_without_apt_is_told_the_missing_libraries_and_started(copy: Copy) -> None:
    (copy.bin / "apt-get").unlink()
    done = copy.start(DISPLAY=":0", LACKING="libEGL.so.1")
    assert "libEGL.so.1" in done.stderr
    assert done.returncode == 7

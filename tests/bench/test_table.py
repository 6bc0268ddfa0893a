"""The table of benches and its exit code. Nothing is timed here."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from statistics import median

import pytest

from tests.bench.table import Row, run, table_of
from tests.bench.timing import REFERENCE_FLOOR_MS, Times, p99, repeated, timed

GOOD = Row("quick", "0.50 ms", "1.00 ms", "0.5", "under 1 ms (ratio 1.5)", True)
BAD = Row("slow one", "12.00 ms", "1.00 ms", "12.0", "under 1 ms (ratio 1.5)", False)
STATED = Row("memory", "3.1 MB")


def test_the_table_has_a_line_for_each_row_in_columns() -> None:
    assert table_of([GOOD, BAD, STATED]).splitlines() == [
        "name      measured    floor  ratio  goal                    holds",
        "-------------------------------------------------------------------------",
        "quick      0.50 ms  1.00 ms    0.5  under 1 ms (ratio 1.5)  holds",
        "slow one  12.00 ms  1.00 ms   12.0  under 1 ms (ratio 1.5)  DOES NOT HOLD",
        "memory      3.1 MB",
    ]


@pytest.mark.parametrize(("rows", "code"), [([GOOD, STATED], 0), ([GOOD, BAD], 1), ([], 0)])
def test_a_goal_that_is_missed_gives_exit_code_1(rows: list[Row], code: int) -> None:
    assert run({"fake": lambda: rows}, [], lambda text: None) == code


def test_only_the_benches_that_are_named_run() -> None:
    said: list[str] = []
    assert run({"good": lambda: [GOOD], "bad": lambda: [BAD]}, ["good"], said.append) == 0
    assert "quick" in said[0]
    assert "slow one" not in said[0]


def test_an_unknown_name_runs_nothing_and_tells_which_there_are() -> None:
    said: list[str] = []
    assert run({"good": lambda: [GOOD], "bad": lambda: [BAD]}, ["good", "god"], said.append) == 2
    assert said == ["god: no such bench; there are good, bad."]


def test_a_goal_is_judged_by_the_ratio_to_the_floor_of_the_same_run() -> None:
    # Ten times the floor on the reference machine is a goal of 10 floors. On a machine half as fast both take twice as
    # long: 18 floors of the fast machine are 9 of the slow one's, which holds; 11 do not, however fast the machine is.
    goal_ms = 10 * REFERENCE_FLOOR_MS
    slow, fast = 2 * REFERENCE_FLOOR_MS, REFERENCE_FLOOR_MS / 100
    assert Times((9 * slow,), (slow,)).row("held", goal_ms).holds is True
    assert Times((11 * fast,), (fast,)).row("missed", goal_ms).holds is False
    assert Times((11 * fast,), (fast,)).row("no goal", None).holds is None


def test_the_longest_run_is_set_against_the_usual_floor() -> None:
    # Runs of 1, 2 and 9 ms, floors of 1, 1 and 7: the longest is 9 / median 1 = 9 floors, not 9 / 7.
    assert Times((1, 2, 9), (1, 1, 7)).row("longest", None, of=max, floor_of=median).ratio == "9.0"


def test_p99_is_what_one_in_a_hundred_exceeds() -> None:
    # Of 0, 1 ... 100, only 100 lies above 99.
    assert p99([float(number) for number in range(101)]) == 99


def test_each_work_runs_once_and_the_floor_beside_it() -> None:
    ran: list[int] = []
    times = timed([lambda: ran.append(1), lambda: ran.append(2)])
    assert ran == [1, 2]
    assert len(times.work) == len(times.floor) == 2
    assert all(floor > 0 for floor in times.floor)


def test_work_is_repeated_at_least_and_at_most_so_often() -> None:
    assert len(list(repeated(lambda: None, least=3, most=9, enough_ms=-1))) == 3
    assert len(list(repeated(lambda: None, least=1, most=4, enough_ms=float("inf")))) == 4


def test_the_command_hands_its_words_and_its_exit_code_on() -> None:
    root = Path(__file__).parents[2]
    done = subprocess.run([sys.executable, "-m", "tests.bench", "god"], cwd=root, capture_output=True, text=True)
    assert done.returncode == 2
    assert done.stdout.startswith("god: no such bench; there are move, ")

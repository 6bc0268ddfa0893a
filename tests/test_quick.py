"""Our ``dataclass`` makes what that of the standard library makes of the same class."""

import dataclasses
import inspect
import pickle
from collections.abc import Callable
from copy import copy
from dataclasses import FrozenInstanceError, field, fields, replace
from typing import Any

import pytest

from quailsched import quick

_Decorator = Callable[..., Any]


def _made_with(dataclass: _Decorator) -> Any:
    @dataclass(frozen=True, slots=True)
    class Basket:
        """Eggs of one day."""

        day: int
        eggs: int = 12
        notes: list[str] = field(default_factory=list, compare=False)
        secret: str = field(default="", repr=False)
        twice: int = field(init=False)

        def __post_init__(self) -> None:
            object.__setattr__(self, "twice", 2 * self.eggs)

        @property
        def dozens(self) -> float:
            return self.eggs / 12

    Basket.__qualname__ = "Basket"
    return Basket


OURS, THEIRS = _made_with(quick.dataclass), _made_with(dataclasses.dataclass)


@quick.dataclass(frozen=True, slots=True)
class Kept:
    name: str
    size: int = 3


@quick.dataclass(frozen=True, slots=True)
class Grown(Kept):
    more: str = "more"


@quick.dataclass(frozen=True, slots=True, eq=False)
class Itself:
    name: str


@quick.dataclass(frozen=True, slots=True)
class One:
    name: str


def test_it_is_made_called_and_told_as_the_standard_one() -> None:
    for args in ((1,), (1, 5), (1, 5, ["cracked"], "x")):
        assert repr(OURS(*args)) == repr(THEIRS(*args))
        assert OURS(*args).twice == THEIRS(*args).twice
    assert inspect.signature(OURS).parameters.keys() == inspect.signature(THEIRS).parameters.keys()
    assert [one.name for one in fields(OURS)] == [one.name for one in fields(THEIRS)]
    assert OURS.__match_args__ == THEIRS.__match_args__
    assert OURS.__slots__ == THEIRS.__slots__
    wrong: tuple[Any, ...]
    for wrong in ((), (1, 2, [], "", 9)):
        with pytest.raises(TypeError):
            OURS(*wrong)


def test_each_has_a_list_of_its_own() -> None:
    one, other = OURS(1), OURS(1)
    one.notes.append("cracked")
    assert other.notes == []


def test_equal_by_what_is_compared_and_only_with_its_own_class() -> None:
    assert OURS(1) == OURS(1, notes=["cracked"])  # notes are not compared
    assert hash(OURS(1)) == hash(OURS(1, notes=["cracked"])) == hash(THEIRS(1))
    assert OURS(1) != OURS(1, secret="x")
    assert OURS(1) != THEIRS(1)
    assert Kept("a") != Grown("a")
    assert hash(One("a")) == hash(("a",))


def test_without_equality_each_is_only_itself() -> None:
    one = Itself("a")
    assert one == one
    assert one != Itself("a")
    assert len({one, Itself("a")}) == 2


def test_nothing_of_it_can_be_set_or_taken_away() -> None:
    for made in (OURS(1), THEIRS(1)):
        with pytest.raises(FrozenInstanceError, match="cannot assign to field 'eggs'"):
            made.eggs = 4
        with pytest.raises(FrozenInstanceError, match="cannot delete field 'eggs'"):
            del made.eggs
        assert not hasattr(made, "__dict__")


def test_a_copy_with_something_else_goes_through_the_beginning_again() -> None:
    assert replace(OURS(1), eggs=5).twice == 10
    assert replace(Grown("a", 4), more="x") == Grown("a", 4, "x")


def test_it_goes_through_copy_and_pickle() -> None:
    grown = Grown("a", 4, "x")
    assert copy(grown) == grown
    assert pickle.loads(pickle.dumps(grown)) == grown


def test_what_it_does_not_do_is_refused() -> None:
    with pytest.raises(TypeError, match="frozen"):
        quick.dataclass(frozen=False, slots=True)

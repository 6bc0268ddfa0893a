"""How bad input is told: the field, its value, and what would be accepted."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Words:
    """Words for a value that is not text, so that a sentence shows them without quotation marks."""

    text: str

    def __str__(self) -> str:
        return self.text


@dataclass(frozen=True, slots=True)
class Finding:
    """What is wrong as a clause of its own ("this field is missing"). It may also say what would be accepted."""

    text: str

    def __str__(self) -> str:
        return self.text


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong. ``where`` names the record and field in words ("batch Clover, eggs set")."""

    where: str
    value: object
    accepted: str
    field: str = ""  # the record's field name, so that a form can show the sentence beside it
    record_id: str = ""  # of the record that it is about, where it is about one

    def sentence(self) -> str:
        if isinstance(self.value, Finding):
            return f"{self.where}: {self.value}{'; ' if self.accepted else ''}{self.accepted}."
        shown = f"“{self.value}”" if isinstance(self.value, str) else f"{self.value}"
        return f"{self.where}: {shown} cannot be used; {self.accepted}."


class FarmError(Exception):
    """A change or a document that would not make a sound farm. Reads as one sentence per fault."""

    def __init__(self, faults: list[Fault]) -> None:
        super().__init__("\n".join(fault.sentence() for fault in faults))
        self.faults = tuple(faults)

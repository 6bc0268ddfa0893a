"""How bad input is told: the field, its value, and what would be accepted."""

from __future__ import annotations

from quailsched.quick import dataclass
from quailsched.words import exact_text, say


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
        value = exact_text(self.value) if isinstance(self.value, float) else str(self.value)
        told = {"where": self.where, "value": value, "accepted": self.accepted}
        if isinstance(self.value, Finding):
            return say("{where}: {value}; {accepted}." if self.accepted else "{where}: {value}.", **told)
        if isinstance(self.value, str):
            return say("{where}: “{value}” cannot be used; {accepted}.", **told)
        return say("{where}: {value} cannot be used; {accepted}.", **told)


def field_of(where: str, field: str) -> str:
    """The words for a field of a record, both said already: "batch Clover, eggs set"."""
    return f"{where}, {field}"


class FarmError(Exception):
    """A change or a document that would not make a sound farm. Reads as one sentence per fault."""

    def __init__(self, faults: list[Fault]) -> None:
        super().__init__("\n".join(fault.sentence() for fault in faults))
        self.faults = tuple(faults)

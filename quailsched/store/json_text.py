"""JSON text as plain values. What is not JSON, or would be read differently elsewhere, is told in words."""

from __future__ import annotations

import json
from typing import Any

from quailsched.farm.faults import FarmError, Fault, Finding
from quailsched.farm.plain_values import shown
from quailsched.words import say

_LONGEST_WHOLE = 60  # digits; Python itself refuses to read more than some thousands
_TOO_LONG = 10**_LONGEST_WHOLE
_SHOWN_AROUND = 20  # letters shown from where JSON ends


def plain_from_text(text: str, faults: list[Fault]) -> Any:
    """The values of a JSON text; a field that stands twice is added to ``faults``.

    Raises FarmError, with line and column, if the text is not JSON.
    """

    def group(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        values = dict(pairs)
        names = [name for name, _ in pairs]
        for name in values:
            if names.count(name) > 1:
                twice = Finding(say("it stands twice in one group"))
                fault = Fault(say("document, field {name}", name=shown(name)), twice, say("once is accepted"))
                faults.append(fault)
        return values

    try:
        return json.loads(text.removeprefix("\ufeff"), object_pairs_hook=group, parse_int=_whole)
    except json.JSONDecodeError as error:
        where = say("document, line {lineno}, column {colno}", lineno=error.lineno, colno=error.colno)
        rest = error.doc[error.pos : error.pos + _SHOWN_AROUND]
        found = (
            say("“{value}” is no JSON", value=shown(rest.splitlines()[0]))
            if rest.strip()
            else say("the text ends too early for JSON")
        )
        accepted = say(
            "a JSON document as export writes it is needed ({lower}{value})",
            lower=error.msg[:1].lower(),
            value=error.msg[1:],
        )
        raise FarmError([Fault(where, Finding(found), accepted)]) from error
    except RecursionError as error:
        accepted = say("groups within groups as in an exported farm are accepted")
        raise FarmError([Fault("document", Finding(say("its groups are nested too deep")), accepted)]) from error


def _whole(digits: str) -> int:
    return int(digits) if len(digits) <= _LONGEST_WHOLE else _TOO_LONG

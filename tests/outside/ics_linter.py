"""A linter for calendar files that works on bytes and shares no code with any iCalendar library.

The rules are those of RFC 5545 (iCalendar), RFC 5546 (iTIP) and RFC 7986 (new properties); each finding names
the section that it comes from. Not a full parser: it knows what a file of events and to-dos can get wrong.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime

BOM = b"\xef\xbb\xbf"

_CONTENT_LINE = re.compile(
    r"""([A-Za-z0-9-]+)((?:;[A-Za-z0-9-]+=(?:"[^"]*"|[^";:,]*)(?:,(?:"[^"]*"|[^";:,]*))*)*):(.*)""", re.DOTALL
)
_PARAMETER = re.compile(r""";([A-Za-z0-9-]+)=((?:"[^"]*"|[^";:])*)""")
_DURATION = re.compile(
    r"[+-]?P(?:\d+W|\d+D(?:T(?:\d+H(?:\d+M(?:\d+S)?)?|\d+M(?:\d+S)?|\d+S))?"
    r"|T(?:\d+H(?:\d+M(?:\d+S)?)?|\d+M(?:\d+S)?|\d+S))"
)
_UNESCAPED = re.compile(r"(?:[^\\;,]|\\[\\;,nN])*")
_UNESCAPED_LIST = re.compile(r"(?:[^\\;]|\\[\\;,nN])*")

# RFC 5545 3.6.1, 3.6.2, 3.6.6: what may stand at most once in a component.
_ONCE = {
    "VCALENDAR": "PRODID VERSION CALSCALE METHOD UID LAST-MODIFIED URL REFRESH-INTERVAL SOURCE COLOR",
    "VEVENT": "DTSTAMP UID DTSTART CLASS CREATED DESCRIPTION GEO LAST-MODIFIED LOCATION ORGANIZER PRIORITY"
    " SEQUENCE STATUS SUMMARY TRANSP URL RECURRENCE-ID DTEND DURATION COLOR",
    "VTODO": "DTSTAMP UID CLASS COMPLETED CREATED DESCRIPTION DTSTART GEO LAST-MODIFIED LOCATION ORGANIZER"
    " PERCENT-COMPLETE PRIORITY RECURRENCE-ID SEQUENCE STATUS SUMMARY URL DUE DURATION COLOR",
    "VALARM": "ACTION TRIGGER DURATION REPEAT DESCRIPTION SUMMARY UID ACKNOWLEDGED",
    "VTIMEZONE": "TZID LAST-MODIFIED TZURL",
}
_ONCE_SECTION = {"VEVENT": "3.6.1", "VTODO": "3.6.2", "VTIMEZONE": "3.6.5", "VALARM": "3.6.6"}
_REQUIRED = {
    "VCALENDAR": {"PRODID": "3.7.3", "VERSION": "3.7.4"},
    "VEVENT": {"UID": "3.8.4.7", "DTSTAMP": "3.8.7.2"},
    "VTODO": {"UID": "3.8.4.7", "DTSTAMP": "3.8.7.2"},
    "VALARM": {"ACTION": "3.6.6", "TRIGGER": "3.6.6"},
    "VTIMEZONE": {"TZID": "3.6.5"},
}
_STATUS = {
    "VEVENT": {"TENTATIVE", "CONFIRMED", "CANCELLED"},
    "VTODO": {"NEEDS-ACTION", "COMPLETED", "IN-PROCESS", "CANCELLED"},
}
_TEXT = {"SUMMARY", "DESCRIPTION", "LOCATION", "COMMENT", "CONTACT", "NAME", "X-WR-CALNAME", "X-WR-CALDESC"}
_TEXT_LIST = {"CATEGORIES", "RESOURCES"}
_LOCAL_OR_UTC = {"DTSTART", "DTEND", "DUE", "RECURRENCE-ID", "EXDATE", "RDATE"}
_UTC_ONLY = {"DTSTAMP": "3.8.7.2", "LAST-MODIFIED": "3.8.7.3", "CREATED": "3.8.7.1", "COMPLETED": "3.8.2.1"}
_OTHERS = {
    *(
        "ATTACH",
        "ATTENDEE",
        "BEGIN",
        "CONFERENCE",
        "END",
        "EXRULE",
        "FREEBUSY",
        "IMAGE",
        "RELATED-TO",
        "REPEAT",
    ),
    *("REQUEST-STATUS", "RRULE", "TZNAME", "TZOFFSETFROM", "TZOFFSETTO"),
}
_KNOWN = {
    *_OTHERS,
    *_TEXT,
    *_TEXT_LIST,
    *_LOCAL_OR_UTC,
    *(name for names in _ONCE.values() for name in names.split()),
}
# CSS Color Module Level 3, section 4.3, as RFC 7986 5.9 asks for.
_COLOUR_NAMES = """
aliceblue antiquewhite aqua aquamarine azure beige bisque black blanchedalmond blue blueviolet brown
burlywood cadetblue chartreuse chocolate coral cornflowerblue cornsilk crimson cyan darkblue darkcyan
darkgoldenrod darkgray darkgreen darkgrey darkkhaki darkmagenta darkolivegreen darkorange darkorchid darkred
darksalmon darkseagreen darkslateblue darkslategray darkslategrey darkturquoise darkviolet deeppink
deepskyblue dimgray dimgrey dodgerblue firebrick floralwhite forestgreen fuchsia gainsboro ghostwhite gold
goldenrod gray green greenyellow grey honeydew hotpink indianred indigo ivory khaki lavender lavenderblush
lawngreen lemonchiffon lightblue lightcoral lightcyan lightgoldenrodyellow lightgray lightgreen lightgrey
lightpink lightsalmon lightseagreen lightskyblue lightslategray lightslategrey lightsteelblue lightyellow
lime limegreen linen magenta maroon mediumaquamarine mediumblue mediumorchid mediumpurple mediumseagreen
mediumslateblue mediumspringgreen mediumturquoise mediumvioletred midnightblue mintcream mistyrose moccasin
navajowhite navy oldlace olive olivedrab orange orangered orchid palegoldenrod palegreen paleturquoise
palevioletred papayawhip peachpuff peru pink plum powderblue purple red rosybrown royalblue saddlebrown
salmon sandybrown seagreen seashell sienna silver skyblue slateblue slategray slategrey snow springgreen
steelblue tan teal thistle tomato turquoise violet wheat white whitesmoke yellow yellowgreen
"""
_COLOURS = frozenset(_COLOUR_NAMES.split())


@dataclass(frozen=True, slots=True)
class Finding:
    """One broken rule. ``section`` is such as "RFC 5545 3.1"; ``line`` counts unfolded lines, from 1."""

    section: str
    line: int
    message: str

    def __str__(self) -> str:
        return f"{self.section}, line {self.line}: {self.message}"


@dataclass(frozen=True, slots=True)
class Property:
    name: str
    parameters: dict[str, str]
    value: str
    line: int

    @property
    def kind(self) -> str:
        return self.parameters.get("VALUE", "DATE-TIME").upper()

    @property
    def is_utc(self) -> bool:
        return self.value.endswith("Z")


@dataclass(slots=True)
class Component:
    name: str
    line: int
    properties: list[Property] = field(default_factory=list)
    children: list[Component] = field(default_factory=list)

    def all(self, *names: str) -> list[Property]:
        return [found for found in self.properties if found.name in names]

    def first(self, name: str) -> Property | None:
        return next(iter(self.all(name)), None)

    def walk(self) -> Iterator[Component]:
        yield self
        for child in self.children:
            yield from child.walk()


def lint(data: bytes) -> list[Finding]:
    """Every rule that ``data`` breaks, in the order of its lines; an empty list for a good file."""
    found = list(_bytes_rules(data))
    lines, more = _unfold(data.removeprefix(BOM))
    found += more
    if not lines or lines[0].upper() != "BEGIN:VCALENDAR":
        found.append(_broken("3.4", 1, "a calendar stream begins with BEGIN:VCALENDAR"))
        return found
    root, more = _tree(lines)
    found += more
    for calendar in root.children:
        found += _calendar_rules(calendar)
        for component in calendar.walk():
            found += _component_rules(component)
    return sorted(found, key=lambda finding: finding.line)


def _broken(section: str, line: int, message: str, rfc: int = 5545) -> Finding:
    return Finding(f"RFC {rfc} {section}", line, message)


def _bytes_rules(data: bytes) -> Iterator[Finding]:
    if data.startswith(BOM):
        yield _broken("3.4", 1, "a byte order mark stands before BEGIN:VCALENDAR")
    if re.search(rb"(?<!\r)\n|\r(?!\n)", data):
        yield _broken("3.1", 1, "a line ends in a bare LF or CR, not in CRLF")
    if not data.endswith(b"\r\n"):
        yield _broken("3.1", data.count(b"\n") + 1, "the last line is not ended by CRLF")


def _unfold(data: bytes) -> tuple[list[str], list[Finding]]:
    found: list[Finding] = []
    physical = re.split(rb"\r?\n", data)
    if physical[-1] == b"":
        physical.pop()
    logical: list[list[bytes]] = []
    for raw in physical:
        if raw[:1] in (b" ", b"\t") and logical:
            logical[-1].append(raw[1:])
        else:
            logical.append([raw])
        if len(raw) > 75:
            found.append(_broken("3.1", len(logical), f"{len(raw)} octets without a fold, more than 75"))
        if re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", raw):
            found.append(_broken("3.1", len(logical), "a control character"))
    texts = []
    for number, parts in enumerate(logical, start=1):
        text = _decoded(b"".join(parts))
        if text is None:
            found.append(_broken("3.1.4", number, "bytes that are not UTF-8"))
        elif any(_decoded(part) is None for part in parts):
            found.append(_broken("3.1", number, "a fold splits a UTF-8 character"))
        texts.append(text if text is not None else b"".join(parts).decode("utf-8", "replace"))
    return texts, found


def _decoded(raw: bytes) -> str | None:
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        return None


def _tree(lines: list[str]) -> tuple[Component, list[Finding]]:
    found: list[Finding] = []
    open_ones = [Component("", 0)]
    for number, text in enumerate(lines, start=1):
        match = _CONTENT_LINE.fullmatch(text)
        if match is None:
            found.append(_broken("3.1", number, "no content line; a line break in a text is written \\n (3.3.11)"))
            continue
        name, parameters, value = match[1].upper(), match[2], match[3]
        if name == "BEGIN":
            child = Component(value.upper(), number)
            open_ones[-1].children.append(child)
            open_ones.append(child)
        elif name == "END":
            if len(open_ones) > 1 and open_ones[-1].name == value.upper():
                open_ones.pop()
            else:
                found.append(_broken("3.6", number, f"END:{value} closes nothing that is open"))
        else:
            given = {m[1].upper(): m[2].strip('"') for m in _PARAMETER.finditer(parameters)}
            open_ones[-1].properties.append(Property(name, given, value, number))
    for unclosed in open_ones[1:]:
        found.append(_broken("3.6", len(lines), f"{unclosed.name} is never ended; the file is cut short"))
    return open_ones[0], found


def _calendar_rules(calendar: Component) -> Iterator[Finding]:
    if not calendar.children:
        yield _broken("3.6", calendar.line, "a calendar without any component")
    first_child = min((child.line for child in calendar.children), default=0)
    for late in calendar.properties:
        if calendar.children and late.line > first_child:
            yield _broken("3.6", late.line, f"{late.name} of the calendar stands after a component")
    yield from _uid_rules(calendar)
    yield from _zone_rules(calendar)
    yield from _method_rules(calendar)


def _uid_rules(calendar: Component) -> Iterator[Finding]:
    uids = Counter(
        (uid.value, "".join(r.value for r in child.all("RECURRENCE-ID")))
        for child in calendar.children
        for uid in child.all("UID")
    )
    for (value, _), times in uids.items():
        if times > 1:
            yield _broken("3.8.4.7", calendar.line, f"{times} components share the UID {value}")


def _zone_rules(calendar: Component) -> Iterator[Finding]:
    defined = {zone.value for child in calendar.children for zone in child.all("TZID")}
    for component in calendar.walk():
        for used in component.properties:
            zone = used.parameters.get("TZID")
            # A leading solidus marks a zone that is defined elsewhere.
            if zone is not None and not zone.startswith("/") and zone not in defined:
                yield _broken("3.2.19", used.line, f"TZID {zone} has no VTIMEZONE in this file")


def _method_rules(calendar: Component) -> Iterator[Finding]:
    method = calendar.first("METHOD")
    for child in calendar.children:
        if method is None and child.name == "VEVENT" and not child.all("DTSTART"):
            yield _broken("3.6.1", child.line, "an event without DTSTART")
        if method and method.value.upper() == "PUBLISH" and child.name in _STATUS and not child.all("ORGANIZER"):
            yield _broken("3.2.1", child.line, "METHOD:PUBLISH needs an ORGANIZER", rfc=5546)


def _component_rules(component: Component) -> Iterator[Finding]:
    for name, section in _REQUIRED.get(component.name, {}).items():
        if not component.all(name):
            yield _broken(section, component.line, f"{component.name} lacks {name}")
    once = set(_ONCE.get(component.name, "").split())
    for name, times in Counter(p.name for p in component.properties if p.name in once).items():
        if times > 1:
            section = _ONCE_SECTION.get(component.name, "3.6")
            yield _broken(section, component.line, f"{name} stands {times} times in one {component.name}")
    for each in component.properties:
        yield from _property_rules(component, each)
    if component.name in _STATUS:
        yield from _span_rules(component)
        yield from _recurrence_rules(component)
    if component.name == "VALARM":
        yield from _alarm_rules(component)


def _property_rules(component: Component, each: Property) -> Iterator[Finding]:
    if each.name not in _KNOWN and not each.name.startswith("X-"):
        yield _broken("3.8.8.2", each.line, f"{each.name} is no known property and has no X- before it")
    if each.name in _TEXT and not _UNESCAPED.fullmatch(each.value):
        yield _broken("3.3.11", each.line, f"{each.name}: a comma, semicolon or backslash is not escaped")
    if each.name in _TEXT_LIST and not _UNESCAPED_LIST.fullmatch(each.value):
        yield _broken("3.3.11", each.line, f"{each.name}: a semicolon or backslash is not escaped")
    if each.name in _LOCAL_OR_UTC:
        yield from _when_rules(each)
    if each.name in _UTC_ONLY and not (_moment(each.value, "DATE-TIME") and each.is_utc):
        yield _broken(_UTC_ONLY[each.name], each.line, f"{each.name}:{each.value} is no time in UTC")
    if each.name == "STATUS" and each.value not in _STATUS.get(component.name, {each.value}):
        yield _broken("3.8.1.11", each.line, f"STATUS:{each.value} is not for a {component.name}")
    if each.name == "TRANSP" and each.value not in ("OPAQUE", "TRANSPARENT"):
        yield _broken("3.8.2.7", each.line, f"TRANSP:{each.value}")
    if each.name == "SEQUENCE" and not re.fullmatch(r"\d+", each.value):
        yield _broken("3.8.7.4", each.line, f"SEQUENCE:{each.value} is no number")
    if each.name in ("DURATION", "REFRESH-INTERVAL") and not _DURATION.fullmatch(each.value):
        yield _broken("3.3.6", each.line, f"{each.name}:{each.value} is no duration")
    if each.name == "VERSION" and each.value != "2.0":
        yield _broken("3.7.4", each.line, f"VERSION:{each.value}")
    yield from _new_property_rules(each)


def _new_property_rules(each: Property) -> Iterator[Finding]:
    """RFC 7986."""
    if each.name == "REFRESH-INTERVAL" and each.parameters.get("VALUE") != "DURATION":
        yield _broken("5.7", each.line, "REFRESH-INTERVAL without VALUE=DURATION", rfc=7986)
    if each.name == "SOURCE" and each.parameters.get("VALUE") != "URI":
        yield _broken("5.8", each.line, "SOURCE without VALUE=URI", rfc=7986)
    if each.name == "COLOR" and each.value.lower() not in _COLOURS:
        yield _broken("5.9", each.line, f"COLOR:{each.value} is no CSS3 colour name", rfc=7986)
    if each.name == "UID" and (len(each.value.encode()) >= 255 or re.search(r"[^A-Za-z0-9-]", each.value)):
        yield _broken("5.3", each.line, f"UID:{each.value} is more than letters, digits and hyphens", rfc=7986)


def _when_rules(each: Property) -> Iterator[Finding]:
    section = {"DATE": "3.3.4", "DATE-TIME": "3.3.5", "PERIOD": "3.3.9"}.get(each.kind)
    if section is None or (section == "3.3.9" and each.name != "RDATE"):
        yield _broken("3.2.20", each.line, f"{each.name} with VALUE={each.kind}")
        return
    for value in each.value.split(","):
        if not _moment(value.split("/")[0], "DATE-TIME" if section == "3.3.9" else each.kind):
            yield _broken(section, each.line, f"{each.name}: {value} is no {each.kind}")
    if "TZID" in each.parameters and (each.kind == "DATE" or each.is_utc):
        yield _broken("3.2.19", each.line, f"{each.name}: TZID goes with neither a DATE nor a UTC time")


def _moment(value: str, kind: str) -> datetime | None:
    pattern, form = (r"\d{8}", "%Y%m%d") if kind == "DATE" else (r"\d{8}T\d{6}Z?", "%Y%m%dT%H%M%S")
    if not re.fullmatch(pattern, value, re.ASCII):
        return None
    try:
        return datetime.strptime(value.removesuffix("Z"), form)
    except ValueError:
        return None


def _span_rules(component: Component) -> Iterator[Finding]:
    start = component.first("DTSTART")
    for name, section, exclusive in (("DTEND", "3.8.2.2", True), ("DUE", "3.8.2.3", False)):
        end = component.first(name)
        if end and component.all("DURATION"):
            within = "3.6.1" if name == "DTEND" else "3.6.2"
            yield _broken(within, end.line, f"{name} and DURATION in one {component.name}")
        if not (start and end):
            continue
        if start.kind != end.kind:
            yield _broken(section, end.line, f"{name} is a {end.kind}, DTSTART a {start.kind}")
            continue
        if (start.is_utc, start.parameters.get("TZID")) != (end.is_utc, end.parameters.get("TZID")):
            continue
        first, last = _moment(start.value, start.kind), _moment(end.value, end.kind)
        if first and last and (last <= first if exclusive else last < first):
            yield _broken(section, end.line, f"{name} {end.value} is not after DTSTART {start.value}")


def _recurrence_rules(component: Component) -> Iterator[Finding]:
    start = component.first("DTSTART")
    for rule in component.all("RRULE"):
        parts = dict(part.partition("=")[::2] for part in rule.value.upper().split(";"))
        if "FREQ" not in parts:
            yield _broken("3.3.10", rule.line, "RRULE without FREQ")
        if "COUNT" in parts and "UNTIL" in parts:
            yield _broken("3.3.10", rule.line, "COUNT and UNTIL in one RRULE")
        if start and "UNTIL" in parts:
            until = parts["UNTIL"]
            has_zone = start.is_utc or "TZID" in start.parameters
            if not _moment(until, start.kind):
                yield _broken("3.3.10", rule.line, f"UNTIL={until} is no {start.kind} as DTSTART is")
            elif start.kind == "DATE-TIME" and has_zone and not until.endswith("Z"):
                yield _broken("3.3.10", rule.line, f"UNTIL={until} has to be in UTC")
    for exception in component.all("EXDATE", "RECURRENCE-ID"):
        if start and exception.kind != start.kind:
            section = "3.8.5.1" if exception.name == "EXDATE" else "3.8.4.4"
            yield _broken(section, exception.line, f"{exception.name} is no {start.kind} as DTSTART is")


def _alarm_rules(alarm: Component) -> Iterator[Finding]:
    action, trigger = alarm.first("ACTION"), alarm.first("TRIGGER")
    needed = {"DISPLAY": ("DESCRIPTION",), "EMAIL": ("DESCRIPTION", "SUMMARY", "ATTENDEE")}
    for name in needed.get(action.value.upper() if action else "", ()):
        if action and not alarm.all(name):
            yield _broken("3.6.6", alarm.line, f"an alarm with ACTION:{action.value} lacks {name}")
    if bool(alarm.all("DURATION")) != bool(alarm.all("REPEAT")):
        yield _broken("3.6.6", alarm.line, "DURATION and REPEAT of an alarm come together")
    if trigger and trigger.parameters.get("VALUE") == "DATE-TIME":
        if not (_moment(trigger.value, "DATE-TIME") and trigger.is_utc):
            yield _broken("3.8.6.3", trigger.line, f"TRIGGER {trigger.value} is no time in UTC")
    elif trigger and not _DURATION.fullmatch(trigger.value):
        yield _broken("3.8.6.3", trigger.line, f"TRIGGER {trigger.value} is no duration")

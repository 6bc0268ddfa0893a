"""Collects what the program says, keeps the translations of it, and compiles them.

``.venv/bin/python packaging/translations.py`` brings ``resources/translations/*/*.ts`` up to date: a file of Qt
Linguist for each language and package; new texts are marked unfinished, texts that are said no more go. Then it
compiles each language into ``resources/translations/LANGUAGE.qm``. ``check`` changes nothing and tells what is missing.
"""

from __future__ import annotations

import ast
import csv
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

TOP = Path(__file__).parent.parent
PACKAGE = TOP / "quailsched"
TRANSLATIONS = TOP / "resources" / "translations"
CONTEXT = "quailsched"
# Columns of tables that are said: file, column.
TABLES = (
    *(("labels.csv", "label"), ("kinds.csv", "name")),
    *(("measures.csv", "name"), ("measures.csv", "formula"), ("measures.csv", "note")),
)
_LAYERS = (
    *("husbandry", "farm", "season", "outlook", "edits", "chores", "planner"),
    *("report", "calendars", "store", "session", "desktop", "commands"),
)
_PLACES = re.compile(r"{(\w+)}")


class NotWrittenOutError(Exception):
    """Something is said that is not written out where it is said."""


def texts_of(tree: ast.AST, where: str) -> Iterator[str]:
    """The texts of one module. Raises NotWrittenOutError for an f-string or a sum in the place of a text."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not node.args:
            continue
        name = node.func.id if isinstance(node.func, ast.Name) else ""
        if name in ("say", "marked"):
            yield from _written_out(node.args[0], where)
        elif name == "Command":
            yield from (text for number in (1, 2, 4) for text in _written_out_at(node.args, number, where))
        elif name == "count_text" and len(node.args) > 1:
            yield from _nouns(node.args[1:], where)


def _written_out_at(arguments: list[ast.expr], number: int, where: str) -> Iterator[str]:
    """The text that stands at a place of a command of the window: its name, its menu, its sentence."""
    if number < len(arguments):
        yield from (text for text in _written_out(arguments[number], where) if text)


def _written_out(argument: ast.expr, where: str) -> Iterator[str]:
    if isinstance(argument, ast.Constant) and isinstance(argument.value, str):
        yield argument.value
    elif isinstance(argument, ast.IfExp):
        yield from _written_out(argument.body, where)
        yield from _written_out(argument.orelse, where)
    elif isinstance(argument, ast.JoinedStr | ast.BinOp):
        raise NotWrittenOutError(f"{where}, line {argument.lineno}: write the text out, with names in braces")


def _nouns(arguments: list[ast.expr], where: str) -> Iterator[str]:
    """One and many: "chick" alone stands for "chick" and "chicks"."""
    given = list(_written_out(arguments[0], where))
    yield from given
    if len(arguments) > 1:
        yield from _written_out(arguments[1], where)
    else:
        yield from (f"{one}s" for one in given)


def collect() -> dict[str, list[str]]:
    """By package, every text that is said, each once: in the lowest package that says it."""
    found: dict[str, dict[str, None]] = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        parts = path.relative_to(PACKAGE).parts
        package = parts[0] if len(parts) > 1 and parts[0] != "resources_packed" else "commands"
        tree = ast.parse(path.read_text(encoding="utf-8"))
        found.setdefault(package, {}).update(dict.fromkeys(texts_of(tree, path.relative_to(TOP).as_posix())))
    for file, column in TABLES:
        with (TOP / "resources" / "husbandry" / file).open(encoding="utf-8", newline="") as table:
            found["husbandry"].update(dict.fromkeys(row[column] for row in csv.DictReader(table) if row.get(column)))
    seen: set[str] = set()
    once: dict[str, list[str]] = {}
    for package in (*_LAYERS, *sorted(found.keys() - set(_LAYERS))):
        once[package] = [text for text in found.get(package, {}) if text not in seen]
        seen.update(once[package])
    return once


def known(language: str) -> dict[str, str]:
    """The translations that there are, of all packages."""
    pairs = {}
    for path in sorted((TRANSLATIONS / language).glob("*.ts")):
        for message in ElementTree.parse(path).getroot().iter("message"):
            source, translation = message.findtext("source") or "", message.find("translation")
            if translation is not None and translation.text and translation.get("type") != "unfinished":
                pairs[source] = translation.text
    return pairs


def missing(language: str) -> list[str]:
    """Texts without a translation, or with one that has other names in braces, or begins or ends with other blanks."""
    pairs = known(language)
    texts = [text for of_package in collect().values() for text in of_package]
    return [text for text in texts if text not in pairs or not _fits(text, pairs[text])]


def _fits(text: str, translation: str) -> bool:
    blanks = len(text) - len(text.lstrip()), len(text) - len(text.rstrip())
    theirs = len(translation) - len(translation.lstrip()), len(translation) - len(translation.rstrip())
    return set(_PLACES.findall(text)) == set(_PLACES.findall(translation)) and blanks == theirs


def write(language: str) -> None:
    """Bring the files of a language up to date, translations kept."""
    pairs = known(language)
    folder = TRANSLATIONS / language
    folder.mkdir(parents=True, exist_ok=True)
    texts = {package: found for package, found in collect().items() if found}
    for path in folder.glob("*.ts"):
        if path.stem not in texts:
            path.unlink()
    for package, found in texts.items():
        root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
        context = ElementTree.SubElement(root, "context")
        ElementTree.SubElement(context, "name").text = CONTEXT
        for text in sorted(found):
            message = ElementTree.SubElement(context, "message")
            ElementTree.SubElement(message, "source").text = text
            translation = ElementTree.SubElement(message, "translation")
            if text in pairs:
                translation.text = pairs[text]
            else:
                translation.set("type", "unfinished")
        ElementTree.indent(root, " ")
        body = ElementTree.tostring(root, encoding="unicode")
        head = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
        (folder / f"{package}.ts").write_text(f"{head}{body}\n", encoding="utf-8")


def compile_(language: str, out: Path) -> None:
    """All files of a language as one that Qt reads."""
    files = [str(path) for path in sorted((TRANSLATIONS / language).glob("*.ts"))]
    tool = Path(sys.executable).parent / "pyside6-lrelease"
    subprocess.run([str(tool), "-silent", *files, "-qm", str(out)], check=True)


def languages() -> list[str]:
    return sorted(path.name for path in TRANSLATIONS.iterdir() if path.is_dir())


def main(words: list[str]) -> int:
    if words == ["check"]:
        gaps = [f"{language}: {text!r}" for language in languages() for text in missing(language)]
        print("\n".join(gaps) or "Everything is translated.")
        return 1 if gaps else 0
    for language in languages():
        write(language)
        compile_(language, TRANSLATIONS / f"{language}.qm")
        print(f"{language}: {len(missing(language))} texts without a translation")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

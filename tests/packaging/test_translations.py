"""Every text that is said has its translation in every language, and what is compiled is up to date."""

from __future__ import annotations

import importlib.util
from pathlib import Path
from types import ModuleType

import pytest

from quailsched.desktop.actions import COMMANDS

TOP = Path(__file__).parents[2]


def _translations() -> ModuleType:
    spec = importlib.util.spec_from_file_location("translations", TOP / "packaging" / "translations.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


translations = _translations()


@pytest.mark.parametrize("language", translations.languages())
def test_every_text_has_a_translation_with_the_same_names_in_braces(language: str) -> None:
    assert translations.missing(language) == []


@pytest.mark.parametrize("language", translations.languages())
def test_what_is_compiled_is_what_stands_in_the_files(language: str, tmp_path: Path) -> None:
    translations.compile_(language, tmp_path / "fresh.qm")
    assert (tmp_path / "fresh.qm").read_bytes() == (translations.TRANSLATIONS / f"{language}.qm").read_bytes()


def test_texts_are_collected_from_calls_tables_and_counts() -> None:
    import ast

    code = 'say("{name} is here", name=n)\nmarked("Mon")\ncount_text(3, "chick")\ncount_text(3, "bus", "buses")\n'
    code += 'say("one" if x else "other")\nwindow.say(f"not {this}")\n'
    found = list(translations.texts_of(ast.parse(code), "here"))
    assert found == ["{name} is here", "Mon", "chick", "chicks", "bus", "buses", "one", "other"]
    with pytest.raises(translations.NotWrittenOutError, match="here, line 1"):
        list(translations.texts_of(ast.parse('say(f"{name} is here")'), "here"))


@pytest.mark.parametrize("language", translations.languages())
def test_in_no_menu_two_rows_have_the_same_letter(language: str) -> None:
    said = translations.known(language)
    for menu in {command.menu for command in COMMANDS}:
        rows = [said[command.text] for command in COMMANDS if command.menu == menu]
        letters = [row[row.index("&") + 1].lower() for row in rows if "&" in row]
        assert len(letters) == len(set(letters)), rows

"""The language of the window: that of the desktop where there is a translation, or the one that was chosen."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from quailsched.resources import resource
from quailsched.words import ENGLISH, Language, use

# How each language calls itself; "auto" is as the desktop is set.
LANGUAGES = {"en": "English", "de": "Deutsch"}
_CONTEXT = "quailsched"
_MONTH_FIRST = "M"
_translators: list[QTranslator] = []  # that are installed


def wanted_language(choice: str = "auto") -> str:
    """The language for "auto" or for one that was chosen; English where there is no translation."""
    language = QLocale.system().name().partition("_")[0] if choice == "auto" else choice
    return language if language in LANGUAGES else "en"


def speak(app: QCoreApplication, language: str) -> None:
    """Say everything in ``language``, with its numbers and dates; to be done before anything is shown."""
    system = QLocale.system()
    spoken = system if system.name().partition("_")[0] == language else QLocale(language)
    QLocale.setDefault(spoken)
    while _translators:  # to ask the application for them takes 7 ms
        old = _translators.pop()
        app.removeTranslator(old)
        old.deleteLater()
    if language != "en":
        ours, theirs = QTranslator(app), QTranslator(app)
        ours.load(resource("translations", f"{language}.qm").as_posix())
        theirs.load(f"qtbase_{language}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        for one in (theirs, ours):
            app.installTranslator(one)
            _translators.append(one)
    use(_language_of(language, spoken))


def _language_of(language: str, spoken: QLocale) -> Language:
    month_first = spoken.dateFormat(QLocale.FormatType.ShortFormat).startswith(_MONTH_FIRST)
    if language == "en":
        return Language(day_pattern="{month} {day}") if month_first else ENGLISH
    pattern = {"de": "{day}. {month}"}.get(language, "{day} {month}")
    return Language(_translate, spoken.decimalPoint(), spoken.groupSeparator(), pattern)


def _translate(text: str) -> str:
    return QCoreApplication.translate(_CONTEXT, text)

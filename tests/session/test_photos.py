"""Photos beside the farm: copied whole, never over another, and gone again where the count was refused."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from quailsched.session.faults import FarmError, StoreError
from quailsched.session.photos import kept_photo, photo_folder


@pytest.fixture
def source(tmp_path: Path) -> Path:
    path = tmp_path / "camera" / "hatch.jpg"
    path.parent.mkdir()
    path.write_bytes(b"a picture")
    return path


@pytest.fixture
def farm_file(tmp_path: Path) -> Path:
    return tmp_path / "Pebble Bank.quail"


def test_a_photo_is_copied_into_a_folder_named_after_the_farm(farm_file: Path, source: Path) -> None:
    with kept_photo(farm_file, source) as name:
        assert name == "hatch.jpg"
    assert (farm_file.parent / "Pebble Bank photos" / "hatch.jpg").read_bytes() == b"a picture"
    assert source.exists()


def test_a_name_that_is_taken_gets_a_number(farm_file: Path, source: Path) -> None:
    names = []
    for _ in range(3):
        with kept_photo(farm_file, source) as name:
            names.append(name)
    assert names == ["hatch.jpg", "hatch 2.jpg", "hatch 3.jpg"]
    assert len(os.listdir(photo_folder(farm_file))) == 3  # and no passing names


def test_the_copy_goes_again_when_the_count_is_refused(farm_file: Path, source: Path) -> None:
    with pytest.raises(FarmError), kept_photo(farm_file, source):
        raise FarmError([])
    assert not photo_folder(farm_file).exists()
    photo_folder(farm_file).mkdir()
    with pytest.raises(FarmError), kept_photo(farm_file, source):
        raise FarmError([])
    assert os.listdir(photo_folder(farm_file)) == []  # a folder of the keeper's own stays
    with kept_photo(farm_file, source):
        pass
    with pytest.raises(StoreError), kept_photo(farm_file, source):
        raise StoreError
    assert os.listdir(photo_folder(farm_file)) == ["hatch.jpg"]


@pytest.mark.parametrize(
    ("name", "kept"),
    [("a\\b.jpg", "a_b.jpg"), (" . .jpg", "photo.jpg"), ("x\n.png", "x_.png"), ("é" * 120 + ".jpg", "é" * 50 + ".jpg")],
)
def test_a_name_that_not_every_system_has_is_made_plain(farm_file: Path, source: Path, name: str, kept: str) -> None:
    odd = source.rename(source.with_name(name))
    with kept_photo(farm_file, odd) as given:
        assert given == kept


def test_a_name_that_is_no_text_is_kept_as_text(farm_file: Path, source: Path) -> None:
    odd = source.rename(source.with_name(os.fsdecode(b"h\xfftch.jpg")))
    with kept_photo(farm_file, odd) as given:
        given.encode()
        assert given.endswith(".jpg")


def test_what_is_no_file_is_refused_and_nothing_is_made(farm_file: Path, tmp_path: Path) -> None:
    with pytest.raises(FarmError, match="a file of up to 100 MB is accepted"), kept_photo(farm_file, tmp_path):
        pass
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(FarmError, match="a file of up to 100 MB"), kept_photo(farm_file, tmp_path / "pipe"):
        pass
    with pytest.raises(StoreError, match="cannot be read"), kept_photo(farm_file, tmp_path / "none.jpg"):
        pass
    assert not photo_folder(farm_file).exists()


def test_a_folder_that_cannot_be_made_is_told(farm_file: Path, source: Path) -> None:
    photo_folder(farm_file).write_text("in the way")
    with pytest.raises(StoreError, match="Pebble Bank photos cannot be written"), kept_photo(farm_file, source):
        pass

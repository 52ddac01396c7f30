"""Labels as they come out on paper: a PDF rendered and measured."""

# ruff: noqa: S603, S607  the programs started here are our own choice

import subprocess

import numpy as np

from candlecalc.labels.shapes import Label, Paper, Text

DPI = 600


def paper(**changed):
    """An invented sheet of 24 labels."""
    given = {
        "name": "a sheet of 24", "sheet": "a4", "shape": "rectangle", "rows": 8, "columns": 3, "width": 63.5,
        "height": 33.9, "left": 7.2, "top": 12.9, "gap_across": 2.55, "gap_down": 0.0,
    }  # fmt: skip
    return Paper(**{**given, **changed})


def text(part, words, height=1.2, code="", **changed):
    return Text(part, words, height, code, **{"confirmed": True, **changed})


def label(*texts, kind="front", holds=250.0):
    return Label("Test candle", kind, texts, holds)


def dots(pdf, tmp_path, left=0.0, top=0.0, wide=210.0, high=297.0, dpi=DPI):
    """A part of the first page, in mm, rendered: rows of dots, each red, green and blue."""
    path = tmp_path / "labels.pdf"
    path.write_bytes(pdf)
    crop = [str(round(mm * dpi / 25.4)) for mm in (left, top, wide, high)]
    words = [word for pair in zip(("-x", "-y", "-W", "-H"), crop, strict=True) for word in pair]
    run = subprocess.run(
        ["pdftoppm", "-r", str(dpi), "-f", "1", "-l", "1", *words, path], capture_output=True, check=True
    )
    kind, size, _, body = run.stdout.split(b"\n", 3)
    assert kind == b"P6"
    across, down = map(int, size.split())
    return np.frombuffer(body, dtype=np.uint8).reshape(down, across, 3).astype(np.int16)


def dark(picture):
    """Where ink is darker than half, whatever its colour."""
    return picture.min(axis=2) < 128


def red(picture):
    return (picture[:, :, 0] > 180) & (picture[:, :, 1] < 128)


def heights(ink, dpi):
    """How high each letter is in mm, from left to right; they must not touch."""
    letters = spans(ink.any(axis=0))
    rows = [np.flatnonzero(ink[:, first:last].any(axis=1)) for first, last in letters]
    return [(row[-1] - row[0] + 1) * 25.4 / dpi for row in rows]


def spans(line):
    """The first and the last place of each run of ink along a line, counted from 0."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], line.astype(int), [0]))))
    return list(zip(edges[::2], edges[1::2], strict=True))


def read_back(pdf, tmp_path):
    """The words of a PDF as a program reads them."""
    path = tmp_path / "read.pdf"
    path.write_bytes(pdf)
    run = subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, check=True)
    return run.stdout.decode("utf-8").split()

"""What every test may ask for."""

import libreoffice
import pytest


@pytest.fixture(scope="session")
def office():
    """LibreOffice, started at the first question and stopped with the run; one for each test process.

    `libreoffice.py` says what it can be asked.
    """
    shared = libreoffice.shared()
    yield shared
    shared.close()

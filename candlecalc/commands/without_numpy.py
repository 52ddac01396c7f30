"""openpyxl without NumPy, which it brings wherever that is installed, to know its numbers.

A command hands it none, and NumPy takes a tenth of a second. In a program that has either already nothing changes.
"""

import sys

if not {"numpy", "openpyxl"} & sys.modules.keys():
    sys.modules["numpy"] = None  # type: ignore[assignment]  # what Python takes for "not installed"
    try:
        import openpyxl  # noqa: F401
    finally:
        del sys.modules["numpy"]

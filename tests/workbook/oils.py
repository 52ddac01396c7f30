"""A small season with the data sheets of its oils: invented, and as suppliers print them."""

import datetime

import books

from candlecalc.season.tables import TABLES

PEAR, ORANGE, CLOVE, AMBER = "Pear and honey oil", "Bitter orange oil", "Clove and bay oil", "Amber dye flakes"
KEYS = ("material", "substance", "concentration", "classes")
OF_LIMONENE = "Flam. Liq. 3 H226; Skin Sens. 1B H317; Aquatic Chronic 1 H410"
SHEETS = [
    (PEAR, "Citral 5392-40-5", "3-5 %", "Skin Sens. 1 H317; Eye Irrit. 2 H319", None),
    (PEAR, "Hexyl cinnamal 101-86-0", "10-20 %", "Skin Sens. 1B H317; Aquatic Chronic 2 H411", None),
    (PEAR, "d-Limonene 5989-27-5", "20-30 %", OF_LIMONENE, "M=1"),
    (ORANGE, "d-Limonene 5989-27-5", "> 50 - <= 75 %", OF_LIMONENE, "M=1"),
    (CLOVE, "Eugenol 97-53-0", "60-80 %", "Eye Irrit. 2 H319; Skin Sens. 1B H317", None),
    (AMBER, "Wax, no hazardous substance listed", "100 %", "not classified", None),
]  # fmt: skip


def sheet(material, substance, concentration, classes, specifics=None, **more):
    row = {"material": material, "substance": substance, "concentration": concentration, "classes": classes}
    return dict.fromkeys(TABLES["oil_sheets"].keys) | row | {"specifics": specifics} | more


def season(sheets=SHEETS, **tables):
    """The small season with records, its oils' sheets, and what else is given by table."""
    made = books.small().with_records()
    rows = [sheet(*line) for line in sheets]
    if rows:
        rows[0] |= {"sheet_date": datetime.date(2027, 3, 1), "version": "4"}
    for key, given in {"oil_sheets": rows, **tables}.items():
        made.tables[key] = given
    return made

"""The Trace tab: every lot in a batch, and every batch that a lot went into or may have gone into.

A lot that was typed on Used otherwise is noted. Any other is assumed: the one opened last by that day, else the oldest
of which there is some. So the batches are listed from the lot before on, each with its lot and how that is known.
"""

from candlecalc.season.fields import Field
from candlecalc.season.tables.stock import BATCH_NUMBER
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    KEY_THING,
    Expression,
    Results,
    Whole,
    at,
    at_row,
    day_of,
)
from candlecalc.workbook.cells.stock_card import HAIR, KEY_PLACE, last_below, of_same_thing
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell, made_of
from candlecalc.workbook.writing.printed import paper
from candlecalc.workbook.writing.single_entry import SingleEntry, write_entry

TAB = Tab("Trace", "output", "Type a batch number, or choose a material and type its lot: what went into which batch.")
BATCH = Field("trace_batch", "Batch number", "a batch on the Batch log", BATCH_NUMBER)
MATERIAL = Field("trace_material", "Material", "the material whose lot you look for", names_from="materials")
LOT = Field("trace_lot", "Supplier's lot", "its number, as on Purchases", longest=32)
PICKS = (BATCH, MATERIAL, LOT)

FIRST_PICK = 3
PARTS, PART_LINES = 8, 15
BUYERS, BUYER_LINES = PARTS + PART_LINES + 3, 10
NOTED, NOTED_LINES = BUYERS + BUYER_LINES + 3, 10
WENT, WENT_LINES = NOTED + NOTED_LINES + 3, 60
FOOT = WENT + WENT_LINES + 1
PART_HEADS = ("Material", "Amount, {weight} or each", "Cost, {money}", "Lot", "How it is known", "Supplier", "Use by")
BUYER_HEADS = ("Place", "How many", "Kind", "Product", "Order", "", "Date")
NOTED_HEADS = ("Product", "Batch number", "Good", "Used of it", "", "", "Poured on")
WENT_HEADS = (
    "What for",
    "Batch number",
    "Amount, {weight} or each",
    "Lot",
    "How it is known",
    "The lot you look for",
    "Date",
)
WIDTHS = {"A": 34, "B": 14, "C": 14, "D": 30, "E": 24, "F": 26, "G": 12, **dict.fromkeys("IJKLMNOP", 9)}
ASSUMED = ("assumed: opened last", "assumed: oldest first")


def _shows(page: Page, where: str, value: Expression, number: str = "text", *, if_there: str) -> None:
    """A result, blank while another cell is blank or holds an error."""
    shown = made_of('IF(COUNTA({there})*(LEN(IFERROR({there},""))>0)=0,"",{value})', there=if_there, value=value)
    page.shows(where, shown, "result", number)


def _finds(page: Page, where: str, value: Expression) -> None:
    """A step on the way, beside the page: blank where nothing is found."""
    page.shows(where.replace("$", ""), made_of('IFERROR({value},"")', value=value), "note", "row")


def _heads(page: Page, row: int, words: str, heads: tuple[str, ...]) -> None:
    page.put(f"A{row - 1}", words, "section")
    for letter, head in zip(page.columns, heads, strict=True):
        page.put(f"{letter}{row}", head or None, "head", wrap=True)
    page.height(row, 32)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB, portrait=False)
    page = Page(draft, TAB, sheet, "ABCDEFG")
    for letter, width in WIDTHS.items():
        sheet.column_dimensions[letter].width = width
    typed = {}
    for row, field in enumerate(PICKS, start=FIRST_PICK):
        line = SingleEntry(f"A{row}", f"D{row}", f"E{row}", f"C{row}", FIRST_PICK - 1, FIRST_PICK + len(PICKS))
        write_entry(draft, sheet, field, line)
        typed[field] = line.typed
    _batch(page)
    _buyers(page)
    _lot(page, typed[LOT])
    _noted(page)
    for row in range(WENT + 1, FOOT):
        _went(page, row)
    sheet.freeze_panes = f"A{FIRST_PICK + len(PICKS)}"
    sheet.print_area = f"A1:G{FOOT}"
    paper(sheet, str(draft.season.settings["paper"]), portrait=False)


# --- what went into a batch -------------------------------------------------------------------

POUR = f"$J${FIRST_PICK}"  # the row of the batch on the Batch log


def _batch(page: Page) -> None:
    _finds(page, POUR, made_of("MATCH({batch},{batches},0)", batch=f"$C${FIRST_PICK}", batches=Whole("pours", "batch")))  # fmt: skip
    _heads(page, PARTS, "What went into the batch", PART_HEADS)
    for row in range(PARTS + 1, PARTS + PART_LINES + 1):
        line = made_of(
            "IF({nth}>{parts},1/0,{start}+{nth})",
            nth=str(row - PARTS),
            parts=at("pours", "parts", cell(POUR)),
            start=at("pours", "start", cell(POUR)),
        )
        used = f"$I{row}"
        _finds(page, f"I{row}", line)
        _finds(page, f"J{row}", made_of("MATCH({number},{numbers},1)", number=at_row("used", "number", cell(used)), numbers=Results("card", "number")))  # fmt: skip
        for letter, key, shown in (("A", "material", "text"), ("B", "amount", "quantity"), ("C", "cost", "money")):
            _shows(page, f"{letter}{row}", at_row("used", key, cell(used)), shown, if_there=used)
        _lots_of_line(page, row, used, otherwise=at_row("used", "otherwise", cell(used)))
        _shows(
            page,
            f"F{row}",
            made_of('{name}&""', name=at("purchases", "supplier", cell(f"$O{row}"))),
            if_there=f"$O{row}",
        )
        use_by = made_of('IF({day}="","",{day})', day=at("purchases", "expiry", cell(f"$O{row}")))
        _shows(page, f"G{row}", use_by, "date", if_there=f"$O{row}")


def _buyers(page: Page) -> None:
    """Lines of Sales that name the batch; most name none."""
    _heads(page, BUYERS, "Sales on which this batch was noted. Others of it may have gone where none was", BUYER_HEADS)
    for row in range(BUYERS + 1, BUYERS + BUYER_LINES + 1):
        line = f"$I{row}"
        _next_found(page, row, BUYERS + 1, cell(f"$C${FIRST_PICK}"), Whole("sales", "batch"))
        for letter, key, shown in zip(
            "ABCDEG",
            ("place", "pieces", "kind", "product", "order", "date"),
            ("text", "pieces", "text", "text", "text", "date"),
            strict=True,
        ):
            value = at("sales", key, cell(line))
            _shows(
                page,
                f"{letter}{row}",
                value if shown != "text" else made_of('{value}&""', value=value),
                shown,
                if_there=line,
            )


def _next_found(page: Page, row: int, first: int, wanted: Expression, rows: Expression) -> None:
    """In column I the next row of a log that holds a number, below the one found in the line above."""
    above = f"$I{row - 1}" if row > first else "1"
    following = made_of("INDEX({rows},{above}+1):INDEX({rows},ROWS({rows}))", rows=rows, above=above)
    _finds(
        page,
        f"I{row}",
        made_of("{above}+MATCH({wanted}*1,{following},0)", above=above, wanted=wanted, following=following),
    )


def _lots_of_line(page: Page, row: int, there: str, otherwise: Expression) -> None:
    """The lots of a line of what was used, whose place in order stands in J: in K the one that was noted, in L the one
    that was opened last (in P its line), in M and N the oldest that there were, and in O the first row on Purchases of those that count.
    """  # fmt: skip
    place = cell(f"$J{row}")
    thing, number = at_row("card", "thing", place), at_row("card", "number", place)
    gone = at_row("card", "gone", place)
    _finds(page, f"K{row}", made_of('IF({otherwise}=0,"",{lot})', otherwise=otherwise, lot=at("instead", "lot_row", otherwise)))  # fmt: skip
    opened = last_below("opened", made_of("(INT({number}/{key})+1)*{key}", number=number, key=KEY_DAY))
    _finds(page, f"P{row}", opened)
    _finds(page, f"L{row}", of_same_thing("opened", cell(f"$P{row}"), "line", thing))
    before = made_of(
        "IF({place}=1,0,IF({above}={thing},{gone},0))",
        place=place,
        above=at_row("card", "thing", made_of("MAX(1,{place}-1)", place=place)),
        thing=thing,
        gone=at_row("card", "gone", made_of("MAX(1,{place}-1)", place=place)),
    )
    _finds(page, f"M{row}", _lot_at(thing, made_of("{before}+{hair}", before=before, hair=HAIR)))
    _finds(page, f"N{row}", made_of("MAX({first},{last})", first=f"$M{row}", last=_lot_at(thing, made_of("{gone}-{hair}", gone=gone, hair=HAIR))))  # fmt: skip
    _finds(page, f"O{row}", made_of('IF({noted}<>"",{noted},IF(N({opened})>0,{opened},{oldest}))', noted=f"$K{row}", opened=f"$L{row}", oldest=at_row("lots", "line", cell(f"$M{row}"))))  # fmt: skip
    several = made_of('IF(({noted}="")*(N({opened})=0)*({last}>{first}),"  to  "&{name},"")', noted=f"$K{row}", opened=f"$L{row}", first=f"$M{row}", last=f"$N{row}", name=_name(at_row("lots", "line", cell(f"$N{row}"))))  # fmt: skip
    _shows(
        page,
        f"D{row}",
        made_of("{first}&{several}", first=_name(cell(f"$O{row}")), several=several),
        if_there=f"$O{row}",
    )
    known = made_of(f'IF({{noted}}<>"","noted",IF(N({{opened}})>0,"{ASSUMED[0]}","{ASSUMED[1]}"))', noted=f"$K{row}", opened=f"$L{row}")  # fmt: skip
    _shows(page, f"E{row}", known, if_there=there)


def _lot_at(thing: Expression, amount: Expression) -> Expression:
    """Which line of Purchases in order an amount that has gone of a thing falls in."""
    return made_of("MATCH({thing}*{key}+MAX(0,{amount}),{places},1)", thing=thing, key=KEY_PLACE, amount=amount, places=Results("lots", "place"))  # fmt: skip


def _name(row: Expression) -> Expression:
    """A lot's number, or that it has none."""
    lot = at("purchases", "lot", row)
    return made_of('IF({lot}="","no number",{lot}&"")', lot=lot)


# --- where a lot went -------------------------------------------------------------------------

THING, LOT_ROW, LOT_PLACE, FIRST_LINE, LAST_LINE = (f"$J${row}" for row in range(FIRST_PICK + 1, FIRST_PICK + 6))


def _lot(page: Page, typed: str) -> None:
    """Where the lot that is looked for stands, and the lines of what went of its material from the lot before on."""

    _finds(
        page,
        THING,
        made_of("MATCH({name},{names},0)", name=f"$C${FIRST_PICK + 1}", names=Whole("materials", "material")),
    )
    lot = made_of('{thing}&"|"&{lot}', thing=THING, lot=typed)
    _finds(page, LOT_ROW, made_of("MATCH({lot},{lots},0)", lot=lot, lots=Whole("purchases", "lot_name")))
    _finds(page, LOT_PLACE, made_of("MATCH({row},{rows},0)", row=LOT_ROW, rows=Results("lots", "line")))
    begins, ends = (
        last_below("card", made_of("({thing}+{more})*{key}", thing=THING, more=more, key=KEY_THING)) for more in "01"
    )
    _finds(page, LAST_LINE, ends)
    before = made_of("MAX(1,{place}-1)", place=LOT_PLACE)
    earlier = made_of("IF({of}={thing},{before},{place})", of=at_row("lots", "thing", before), thing=THING, before=before, place=LOT_PLACE)  # fmt: skip
    start = made_of("{came}-{amount}+{hair}", came=at_row("lots", "came", earlier), amount=at_row("lots", "amount", earlier), hair=HAIR)  # fmt: skip
    gone = Results("card", "gone")
    oldest = made_of("IFERROR(MATCH({start},INDEX({gone},{begins}+1):INDEX({gone},{last}),1),0)", start=start, gone=gone, begins=begins, last=LAST_LINE)  # fmt: skip
    by_day = last_below("card", made_of("{thing}*{key_thing}+{day}*{key_day}", thing=THING, key_thing=KEY_THING, key_day=KEY_DAY, day=at("purchases", "opened", cell(LOT_ROW))))  # fmt: skip
    opened = made_of('IF({day}="",{lines},{by_day}-{begins})', day=at("purchases", "opened", cell(LOT_ROW)), lines=LAST_LINE, by_day=by_day, begins=begins)  # fmt: skip
    _finds(
        page,
        FIRST_LINE,
        made_of("{begins}+1+MAX(0,MIN({oldest},{opened}))", begins=begins, oldest=oldest, opened=opened),
    )


def _noted(page: Page) -> None:
    _heads(page, NOTED, "Batches for which this lot was noted", NOTED_HEADS)
    for row in range(NOTED + 1, NOTED + NOTED_LINES + 1):
        _next_found(page, row, NOTED + 1, cell(LOT_ROW), Whole("instead", "lot_row"))
        batch = at("instead", "batch", cell(f"$I{row}"))
        _finds(page, f"J{row}", made_of("MATCH({batch},{batches},0)", batch=batch, batches=Whole("pours", "batch")))
        for letter, key, shown in (
            ("A", "product", "text"),
            ("B", "batch", "row"),
            ("C", "good", "pieces"),
            ("G", "date", "date"),
        ):
            _shows(page, f"{letter}{row}", at("pours", key, cell(f"$J{row}")), shown, if_there=f"$J{row}")
        used = made_of(
            'INDEX({names},{row})&""',
            names=Whole("materials", "material"),
            row=at("instead", "used_row", cell(f"$I{row}")),
        )
        _shows(page, f"D{row}", used, if_there=f"$J{row}")


def _went(page: Page, row: int) -> None:
    if row == WENT + 1:
        _heads(page, WENT, "What went of the material, from the lot before on. Lots that were not noted are assumed: any of these may hold it", WENT_HEADS)  # fmt: skip
    line = made_of("IF(({lot}>0)*({first}+{nth}>{last}),1/0,{first}+{nth})", lot=LOT_PLACE, first=FIRST_LINE, nth=str(row - WENT - 1), last=LAST_LINE)  # fmt: skip
    there = f"$J{row}"
    _finds(page, f"J{row}", line)
    number = at_row("card", "number", cell(there))
    _finds(page, f"I{row}", made_of("MOD({number},{key})", number=number, key=KEY_DAY))
    used = cell(f"$I{row}")
    what, source = at("used", "what", used), at("used", "source", used)
    why = made_of(
        'CHOOSE({what},{product},{kind},{set},"counted")',
        what=what,
        product=at("pours", "product", source),
        kind=at("moves", "kind", source),
        set=at("unpacked", "product", source),
    )
    _shows(page, f"A{row}", why, if_there=there)
    _shows(page, f"B{row}", at("used", "batch", used), "row", if_there=there)
    _shows(page, f"C{row}", at("used", "amount", used), "quantity", if_there=there)
    _shows(page, f"G{row}", day_of(number), "date", if_there=there)  # fmt: skip
    _lots_of_line(page, row, there, otherwise=at("used", "otherwise", used))
    is_it = made_of(
        'IF(({noted}="")*(N({opened})=0)*({first}<={place})*({place}<={last})+({row}={lot})*(({noted}<>"")+(N({opened})>0)>0)>0,"this lot","")',
        noted=f"$K{row}",
        opened=f"$L{row}",
        first=f"$M{row}",
        last=f"$N{row}",
        place=LOT_PLACE,
        row=f"$O{row}",
        lot=LOT_ROW,
    )
    _shows(page, f"F{row}", is_it, if_there=f"$O{row}")


register(TAB, __name__, 70, write=write, records=True)

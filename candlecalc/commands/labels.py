"""The command that prints labels, and the check sheets of what stands on them."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from candlecalc.calc.label import panel_area
from candlecalc.commands.counted import counted
from candlecalc.commands.make import Answer, held_in
from candlecalc.files import write_whole
from candlecalc.labels import draw, folder, from_season
from candlecalc.labels.check_sheet import MISSING, THE, CheckSheet, check_sheet
from candlecalc.labels.shapes import Label, Paper
from candlecalc.labels.texts import facts_of, label_of
from candlecalc.labels.weights import weights_said
from candlecalc.season.season import Row, Season
from candlecalc.season.tables.labels import SHEETS

if TYPE_CHECKING:
    from candlecalc.workbook.reports.report import Calculated

STOPPED = 1  # a verdict's place among them, as Burn workings has it
TO_CONFIRM = (
    "Confirm what stands on a label with the market's own authorities, each standard's text, and the supplier's data "
    "sheets: whoever sells the candle answers for it."
)
UNSCALED = "Print it at 100 %, without scaling; --calibrate makes a page that shows whether your printer does"
NOTHING_SOLD = "there is no product to label"


class Wanted(NamedTuple):
    """Which labels are asked for."""

    product: str = ""
    kind: str = "front"
    paper: str = ""
    skip: int = 0
    batch: str = ""
    rules: str = ""


def made(source: Path, out: Path, wanted: Wanted, *, calibrate: bool, force: bool) -> Answer:
    """Write a sheet of labels, or the calibration page of a paper. Nothing is left half written."""
    season, held = _held(source, wanted)
    paper = _paper(held, wanted.paper)
    if calibrate:
        write_whole(out, draw.calibration(paper, held.called.papers), force=force)
        return Answer([f"{out}: print it at 100 %, measure it, and type what you read in {held.called.papers}"], False)
    if not held.products:
        raise ValueError(f"{held.called.products}: {NOTHING_SOLD}")
    product = wanted.product or str(held.products[0]["product"])
    held, batch = _numbered(season, held, product, wanted.batch)
    label, beside = label_of(held, product, wanted.kind)
    try:
        pdf = draw.sheet(label, paper, wanted.skip)
    except draw.DoesNotFitError as problem:
        raise ValueError(f"{problem}; {_larger(label, held)}") from None
    write_whole(out, pdf, force=force)
    many = counted(paper.places - wanted.skip, f"{wanted.kind} label")
    lines = [f"{out}: {many}, {label.product}, on {paper.name}", *_by_rules(season, held, product)]
    lines += [batch if wanted.kind == "base" else "", draw.as_printed(label, paper), UNSCALED]
    lines = list(filter(None, lines))
    beside = [*beside, *_beyond_panel(facts_of(held, product), label, paper, held.called)]
    return Answer([*lines, *_unconfirmed(label, held.called), *beside, TO_CONFIRM], False)


def checked(source: Path, out: Path, wanted: Wanted, *, force: bool) -> Answer:
    """Write check sheets: of one product or of all, by the rules asked for or by all that each is sold under."""
    season = _season(source)
    worked = _worked(season)
    names = (
        [wanted.product]
        if wanted.product
        else [str(row["product"]) for _, row in season.rows("recipes") if row["kind"] == "made" and row["product"]]
    )
    sheets: list[CheckSheet] = []
    left_out: list[str] = []
    for name in names:
        try:
            sheets += _of_product(season, worked, name, wanted)
        except ValueError as problem:
            if wanted.product:
                raise
            left_out.append(f"left out: {name}: {problem}")
    if not sheets:
        raise ValueError("; ".join(left_out) or f"{from_season.CALLED.products}: {NOTHING_SOLD}")
    page = SHEETS[str(season.settings["paper"]).casefold()]
    write_whole(out, draw.check_sheets(sheets, page), force=force)
    missing = sum(line.state == MISSING for sheet in sheets for line in sheet.asked)
    made_of = f"{out}: {counted(len(sheets), 'check sheet')}; {missing} particulars missing"
    return Answer([made_of, *left_out, TO_CONFIRM], False)


def _of_product(season: Season, worked: from_season.Worked, name: str, wanted: Wanted) -> Iterator[CheckSheet]:
    """A check sheet for each set of rules that a product is sold under, or for those asked for."""
    for rules in [wanted.rules] if wanted.rules else from_season.sold_under(season, name):
        held = from_season.read(season, worked, name, rules)
        product, net = str(held.products[0]["product"]), held.products[0]["net"]
        held, batch = _numbered(season, held, product, wanted.batch)
        weighed = weights_said(season, product, wanted.batch, net, rules)
        told = [*([batch] if batch else []), *weighed]
        maker = "; ".join(str(season.settings[key]) for key in ("maker", "place", "season") if season.settings.get(key))
        # A maker at home under these rules needs no importer.
        at_home = season.settings["region"] == rules
        yield check_sheet(held, product, told, from_season.of_oils(season, product), maker, at_home=at_home)


def _held(source: Path, wanted: Wanted) -> tuple[Season | None, folder.Held]:
    """What labels are made from: a workbook, a season's folder, or a folder for labels alone."""
    if source.is_dir() and not (source / "settings.csv").is_file():
        if wanted.rules:
            raise ValueError(f"--rules is for a workbook: in {source} products.csv says which rules a label follows")
        return None, folder.read(source)
    season = _season(source)
    return season, from_season.read(season, _worked(season), wanted.product, wanted.rules)


def _season(source: Path) -> Season:
    season = held_in(source).season
    if not season.records:
        raise ValueError(
            f"{source}: it has no tabs for labels; make it anew with candlecalc new NEW.xlsx --from {source} --records"
        )
    return season


def _worked(season: Season) -> from_season.Worked:
    """What the workbook makes of each product's vessel and wax, and of its test burns."""
    from candlecalc.workbook import book
    from candlecalc.workbook.reports.report import Calculated

    # Rows that would stay blank cost time alone; a table has one at least.
    typed = {key: max(1, season.tables.room(key)) for key in season.tables}
    calculated = Calculated(season, book.drafted(season, book.date_of(season), rows_of=typed))
    return from_season.Worked(_poured(season, calculated), _tested(season, calculated))


def _tested(season: Season, calculated: "Calculated") -> dict[str, folder.Tested]:
    """What each test burn gives for a label."""
    return {
        str(test["test"]).casefold(): folder.Tested(
            str(test["product"] or ""),
            _number(calculated.value("test_results", "label_hours", place)),
            str(calculated.value("test_results", "changed", place) or ""),
            calculated.value("burn_workings", "code", place) == STOPPED,
        )
        for place, test in season.rows("burn_tests")
    }


def _poured(season: Season, calculated: "Calculated") -> dict[str, from_season.Poured]:
    vessels = {str(row["vessel"]).casefold(): row for _, row in season.rows("vessels")}
    measures = season.measures
    found = {}
    for place, recipe in season.rows("recipes"):
        volume, headspace, fill, density = (
            _number(calculated.value("workings", key, place)) for key in ("volume", "headspace", "fill", "blend")
        )
        holds = None if volume is None or headspace is None else volume * (1 - headspace)
        if holds is None and fill and density:  # a fill that was weighed
            holds = measures.to_calc(fill, "g") / density
        vessel = vessels.get(str(recipe["vessel"]).casefold(), {})
        width, height = (_number(vessel.get(key)) for key in ("panel_width", "panel_height"))
        found[str(recipe["product"])] = from_season.Poured(
            None if fill is None else measures.to_calc(fill, "g"),
            holds,
            *(None if length is None else measures.to_calc(length, "mm") for length in (width, height)),
        )
    return found


def _number(value: object) -> float | None:
    return float(value) if isinstance(value, (int, float)) else None


def _numbered(season: Season | None, held: folder.Held, product: str, named: str) -> tuple[folder.Held, str]:
    """The same with a batch's number on the base: of the batch that is named, else of the latest on Batch log.

    And what is to be said of it. A batch of another product is refused: its number would lead to the wrong lots.
    """
    if season is None:
        return (_of_batch(held, product, f"Batch {named}") if named else held), ""
    logged = [row for _, row in season.rows("pours") if row["batch"] and row["date"] and row["product"]]
    of_it = [row for row in logged if str(row["product"]).casefold() == product.casefold()]
    if not named:
        good = [row for row in of_it if row["good"]]
        if not good:
            return held, ""
        row = max(good, key=lambda row: (row["date"], row["batch"]))
        return _of_batch(held, product, _batch(row)), f"{_batch(row)}, the latest on Batch log"
    for row in logged:
        if f"{row['batch']:.0f}" == named.strip():
            if row not in of_it:
                raise ValueError(f"batch {named} is of {row['product']} on Batch log, not of {product}")
            return _of_batch(held, product, _batch(row)), _batch(row)
    return _of_batch(held, product, f"Batch {named}"), f"batch {named} is not on Batch log"


def _batch(row: Row) -> str:
    return f"Batch {row['batch']:.0f}, poured {row['date']}"


def _of_batch(held: folder.Held, product: str, words: str) -> folder.Held:
    """The same with a batch's number on the base in place of what is typed for it."""
    line = {"product": product, "label": "base", "part": "line", "code": "batch", "text": words}
    # It is told for this very sheet.
    own = {**line, "height": None, "language": None, "confirmed_on": "now", "against": "as named for this sheet"}
    kept = [row for row in held.labels if (row["label"], row["part"], row["code"]) != ("base", "line", "batch")]
    return held._replace(labels=[own, *kept])


def _beyond_panel(facts: folder.Row, label: Label, paper: Paper, called: folder.Called) -> list[str]:
    """That a label is larger than the panel by whose area its figures go."""
    if label.kind != "front" or facts["rules"] != "us":
        return []
    panel = panel_area(facts["panel_height"], facts["panel_around"], facts["panel_shape"])
    printed = paper.printed / 100
    if printed <= panel:
        return []
    return [
        f"the label has {printed:.1f} cm2, more than the {panel:.1f} cm2 of its panel on {called.panels}: measure the "
        "panel anew, as the least height of its figures goes by it"
    ]


def _by_rules(season: Season | None, held: folder.Held, product: str) -> list[str]:
    """By which rules a label was made, where a product is sold under several."""
    if season is None:
        return []
    used, sold = facts_of(held, product)["rules"], from_season.sold_under(season, product)
    others = [rules for rules in sold if rules != used]
    also = f"; those of {' and '.join(THE[rules] for rules in others)} take --rules {others[0]}" if others else ""
    return [f"by the rules of {THE[used]}{also}"]


def _paper(held: folder.Held, name: str) -> Paper:
    papers, where = held.papers, held.called.papers
    if not papers:
        raise ValueError(f"{where}: there is no paper in it; describe the label sheets you print on")
    for paper in papers:
        if not name or paper.name.casefold() == name.casefold():
            return paper
    raise ValueError(f'"{name}" is not in {where}; there are {", ".join(paper.name for paper in papers)}')


def _larger(label: Label, held: folder.Held) -> str:
    """The smallest of the maker's papers that a label fits on."""
    for paper in sorted(held.papers, key=lambda paper: paper.area):
        try:
            draw.fit(label, paper)
        except ValueError:
            continue
        return f"it fits on {paper.name} ({paper.width:g} x {paper.height:g} mm)"
    return f"it fits on none of your papers; describe a larger one in {held.called.papers}"


def _unconfirmed(label: Label, called: folder.Called) -> list[str]:
    """What PROOF stands for, a line each."""
    texts: Sequence[str] = [f"  {text.called}: {text.against}" for text in label.unconfirmed]
    many = counted(len(texts), "text")
    head = f"PROOF stands across it until {called.labels} says of {many} when and against what you confirmed it:"
    not_counted = [f"PROOF stands across it, as this is not counted: {words}" for words in label.not_counted]
    return [*not_counted, *([head, *texts] if texts else [])]

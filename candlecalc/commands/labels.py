"""The command that prints labels."""

from pathlib import Path

from candlecalc.commands.counted import counted
from candlecalc.commands.make import Answer
from candlecalc.files import write_whole
from candlecalc.labels import draw, folder
from candlecalc.labels.shapes import Label, Paper
from candlecalc.labels.texts import label_of

TO_CONFIRM = (
    "Confirm what stands on a label with the market's own authorities, each standard's text, and the supplier's data "
    "sheets: whoever sells the candle answers for it."
)
UNSCALED = "Print it at 100 %, without scaling; --calibrate makes a page that shows whether your printer does"


def made(
    source: Path, out: Path, product: str, kind: str, paper_name: str, skip: int, *, calibrate: bool, force: bool
) -> Answer:
    """Write a sheet of labels, or the calibration page of a paper. Nothing is left half written."""
    held = folder.read(source)
    paper = _paper(held.papers, paper_name)
    if calibrate:
        write_whole(out, draw.calibration(paper), force=force)
        return Answer(
            [f"{out}: print it at 100 %, measure it, and type what you read in {source / 'papers.csv'}"], False
        )
    if not held.products:
        raise ValueError(f"{source / 'products.csv'}: there is no product in it")
    label, beside = label_of(held, product or held.products[0]["product"], kind)
    try:
        pdf = draw.sheet(label, paper, skip)
    except draw.DoesNotFitError as problem:
        raise ValueError(f"{problem}; {_larger(label, held.papers)}") from None
    write_whole(out, pdf, force=force)
    many = counted(paper.places - skip, f"{kind} label")
    lines = [f"{out}: {many}, {label.product}, on {paper.name}", UNSCALED]
    return Answer([*lines, *_unconfirmed(label), *beside, TO_CONFIRM], False)


def _paper(papers: list[Paper], name: str) -> Paper:
    if not papers:
        raise ValueError("papers.csv: there is no paper in it; describe the label sheets you print on")
    for paper in papers:
        if not name or paper.name.casefold() == name.casefold():
            return paper
    raise ValueError(f'"{name}" is not in papers.csv; there are {", ".join(paper.name for paper in papers)}')


def _larger(label: Label, papers: list[Paper]) -> str:
    """The smallest of the maker's papers that a label fits on."""
    for paper in sorted(papers, key=lambda paper: paper.area):
        try:
            draw.fit(label, paper)
        except ValueError:
            continue
        return f"it fits on {paper.name} ({paper.width:g} x {paper.height:g} mm)"
    return "it fits on none of your papers; describe a larger one in papers.csv"


def _unconfirmed(label: Label) -> list[str]:
    """What PROOF stands for, a line each."""
    texts = label.unconfirmed
    if not texts:
        return []
    many = counted(len(texts), "text")
    head = f"PROOF stands across it until labels.csv says of {many} when and against what you confirmed it:"
    return [head, *(f"  {text.called}: {text.against}" for text in texts)]

"""A formula to paste: arguments put in, and guarded unless the maker asks for it bare."""

import re

import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main
from candlecalc.faces.asked.pasting import pasted
from candlecalc.faces.asked.question import function

WRITTEN = [  # function, arguments as typed, the formula
    (
        "oil_for_wax",
        "wax=B4 load=C4",
        '=IF(OR(B4="",ISLOGICAL(B4),B4<0,B4>1000000000000,C4="",ISLOGICAL(C4),C4<0,C4>0.5),NA(),B4*C4)',
    ),
    ("oil_for_wax", "B4 8%", '=IF(OR(B4="",ISLOGICAL(B4),B4<0,B4>1000000000000),NA(),B4*0.08)'),
    ("oil_for_wax", "wax=$B$4 load='My oils'!C4 --bare", "=$B$4*'My oils'!C4"),
    ("oil_for_wax", "wax=my_wax load=0.08 --bare", "=my_wax*0.08"),
    ("oil_for_wax", "wax=1lb load=C4 --bare", "=453.59237*C4"),
    ("fee_at", "price=B4 fee=10% basis=Gross --bare", '=MAX(B4*0.1*(1+0*("gross"="gross")),0)'),
    ("packs_to_buy", "B4 C4 --bare", "=MAX(0,ROUNDUP(ROUND((B4-0)/C4,6),0))"),
    # A blank cell stands for what is left out, with the tests around it or without.
    ("fee_at", "B4 C4 basis=D4 --bare", '=MAX(B4*C4*(1+0*(IF(D4="","net",D4)="gross")),0)'),
    ("parts_cost", "amounts=B4:B9 costs=C4:C9 --bare", "=SUMPRODUCT(B4:B9,C4:C9)"),
]


@pytest.mark.parametrize("name, words, formula", WRITTEN)
def test_a_formula_is_written_over_the_makers_cells(name, words, formula):
    typed = [word for word in re.findall(r"(?:[^\s']|'[^']*')+", words) if word != "--bare"]
    assert pasted(function(name), typed, bare="--bare" in words) == formula


REFUSED = [  # function, arguments, what is said
    ("oil_for_wax", ["wax=B4"], "oil_for_wax also needs load"),
    ("oil_for_wax", ["wax=B4:B9", "load=C4"], "wax is B4:B9; it takes one cell, not a range"),
    ("oil_for_wax", ["wax=B4", "load=8"], 'load is "8"; it takes 0 to 0.5 of wax weight. Did you mean 8%?'),
    ("parts_cost", ["amounts=1; 2", "costs=C4:C5"], 'amounts is "1; 2"; in a formula it takes a range such as B4:B12'),
    ("fee_at", ["B4", "10%", "basis=both"], 'basis is "both"; it takes "net" or "gross"'),
    ("split_charge", ["10", "B4:B9"], "split_charge has no cell formula: its answer is several cells"),
]


@pytest.mark.parametrize("name, words, said", REFUSED)
def test_what_cannot_stand_in_a_formula_is_refused(name, words, said):
    with pytest.raises(ValueError, match=re.escape(said)):
        pasted(function(name), words)


def test_the_command_writes_one_line():
    told = CliRunner().invoke(main, ["formula", "oil_for_wax", "wax=B4", "load=C4", "--bare"])
    assert (told.exit_code, told.output) == (0, "=B4*C4\n")

"""Test burns typed into a workbook come to what Python's functions say, verdict and reasons word by word.

The functions are checked against published regressions and limits in tests/published; burn_logs.py calls them for a
season. Here are all branches of the verdicts, in the embedded engine and in LibreOffice, and three published logs.
"""

import datetime

import books
import burn_logs
import pytest
from libreoffice import stored

import candlecalc
from candlecalc.calc.terms.burn import VERDICTS
from candlecalc.calc.wick import recipe_verdict
from candlecalc.quantities.statistics import t_quantile

SEEDS = [1, 2, 3]
MISSING = ("", None)


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    season = books.folder.read(books.folder.DEMO, records=True).with_records()
    return books.Book(season, tmp_path_factory.mktemp("burning") / "demo.xlsx")


@pytest.fixture(scope="module", params=SEEDS)
def made(request, tmp_path_factory):
    return books.Book(burn_logs.burnt(request.param), tmp_path_factory.mktemp("burning") / f"{request.param}.xlsx")


def differences(made, values):
    """What the tabs say of a test that is not what the functions do."""
    season, found = made.season, []
    tests = dict(season.rows("burn_tests"))
    told = {row: burn_logs.of_test(season, test) for row, test in tests.items()}
    pieces = {}
    for row, test in tests.items():
        if told[row]:
            pieces.setdefault(burn_logs.recipe_of(test), []).append(told[row]["verdict"].verdict)
    for row, test in tests.items():
        wanted = _wanted(season, test, told[row], pieces)
        for key, expected in wanted.items():
            cell = made.cell("test_results", key, row)
            got = values.get(cell, "")
            alike = got == pytest.approx(expected, rel=1e-9) if isinstance(expected, float) else got == (expected or "")
            if not alike:
                found.append((test["test"], key, got, expected))
    return found


def _wanted(season, test, told, pieces):
    """What stands in the row of a test, by the functions."""
    nothing = dict.fromkeys(("rate", "rate_low", "rate_high", "verdict", "reasons", "label_hours", "sign", "direction",
                             "to_do", "recipe_verdict", "recipe_reasons", "burnt", "hours"))  # fmt: skip
    if not told:
        return nothing
    hours, weights = told["hours"], told["weights"]
    between = candlecalc.burn_rate_between(hours, weights)
    recipe = recipe_verdict(pieces[burn_logs.recipe_of(test)])
    sign = told["signs"][0] if told["signs"] else (None, None, None)
    return {**nothing, **_for_how_long(season, test, told), "rate": between.rate, "rate_low": between.low,
            "rate_high": between.high, "burnt": hours[-1], "verdict": told["verdict"].verdict,
            "reasons": told["verdict"].reasons, "sign": sign[0], "direction": sign[1], "to_do": sign[2],
            "recipe_verdict": recipe.verdict, "recipe_reasons": recipe.reasons}  # fmt: skip


def _for_how_long(season, test, told):
    """Hours that its fill burns, and those for the label, in grams."""
    measures = season.measures
    vessel = next(row for _, row in season.rows("vessels") if row["vessel"] == test["vessel"])
    wax = next(row for _, row in season.rows("materials") if row["material"] == test["wax"])
    if test["fill"] is None or not vessel["diameter"]:
        return {}  # the product's own fill is another tab's to say
    depth = told["aims"].get("depth")
    stays = candlecalc.wax_that_stays(
        diameter=vessel["diameter"] * measures.length_mm,
        density=wax["density"],
        **({"depth": depth * measures.length_mm} if depth else {}),
    )
    grams = [weight * measures.weight_g for weight in told["weights"]]
    time = candlecalc.burn_time_from_log(told["hours"], grams, test["fill"] * measures.weight_g, stays)
    return {"hours": time.hours, "label_hours": time.label}


def without_hours(found):
    """Of tests without a fill of their own the hours rest on the product's, which is no matter of these functions."""
    return [each for each in found if each[1] not in ("hours", "label_hours") or each[3] is not None]


def test_the_demos_tests_and_burns_come_to_what_the_functions_say(demo):
    assert (len(demo.rows("burn_tests")), len(demo.rows("burn_cycles"))) == (12, 60)
    assert without_hours(differences(demo, stored(demo.path))) == []


def test_every_verdict_and_its_reasons_are_those_of_the_functions(made):
    assert without_hours(differences(made, stored(made.path))) == []


def test_the_logs_come_to_every_verdict():
    seasons = [burn_logs.burnt(seed) for seed in SEEDS]
    tests = [(season, test) for season in seasons for _, test in season.rows("burn_tests")]
    told = [burn_logs.of_test(season, test) for season, test in tests]
    assert {each["verdict"].verdict for each in told if each} == set(VERDICTS)
    reasons = "; ".join(each["verdict"].reasons for each in told if each)
    for part in ("flame 82.5 mm, over 75", "over 50", "burnt for 12.5 s", "vessel cracked", "glow or smoke for 31 s",
                 "lit again by itself", "seen: ", "not looked at", "no target of your own", "not measured",
                 "below 3.", "above 6.", "melt pool 45, below 50", "vessel temperature 62, above 60",
                 "no stop condition"):  # fmt: skip
        assert part in reasons, part


def test_a_verdict_that_is_not_the_functions_is_found(made):
    values = stored(made.path)
    row = next(row for row, test in made.rows("burn_tests") if burn_logs.of_test(made.season, test))
    cell = made.cell("test_results", "verdict", row)
    other = next(verdict for verdict in VERDICTS if verdict != values[cell])
    assert differences(made, values | {cell: other})


def test_the_office_says_the_same(made, office):
    assert without_hours(differences(made, office.recalculated(made.path))) == []


# Three published logs, counted down from a round weight. What was set stands for the hours.
LOGS = {
    # ISO/TS 28037:2010, appendix E, as the documentation of GTC (MSLNZ) gives it: slope 1.964, u 0.041 (printed).
    "ISO": ([1, 2, 3, 4, 5, 6], [3.014, 5.225, 7.004, 9.061, 11.201, 12.762], 1.964, 5e-4, 0.041),
    # Straight-line calibration in the documentation of GTC (MSLNZ): slope 1.76 (printed), 1.757143 (worked).
    "GTC": ([1, 2, 3, 4, 5, 6], [3.3, 5.6, 7.1, 9.3, 10.7, 12.1], 1.757143, 5e-6, None),
    # Graybill and Iyer, Regression Analysis (1994), p. 431: a thermometer against a standard, 96 to 110; the slope by
    # the normal equations (worked): 173.08 / 168.
    "Graybill": (
        [96, 98, 100, 102, 104, 106, 108, 110],
        [95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21],
        173.08 / 168,
        5e-7,
        None,
    ),
}


def published():
    """A season with each of the logs typed as the burns of a test."""
    season = burn_logs.metric()
    recipe = next(row for _, row in season.rows("recipes") if row["kind"] == "made")
    test = {key: recipe[key] for key in ("vessel", "wax", "wick", "load")} | {"date": burn_logs.FIRST}
    burns = []
    for name, (hours, read, *_) in LOGS.items():
        weights = [300 - each for each in read]
        for day, step in enumerate(zip(hours, hours[1:], weights, weights[1:], strict=False)):
            start, end, before, after = step
            date = burn_logs.FIRST + datetime.timedelta(days=day)
            burns.append({"test": name, "date": date, "hours": float(end - start), "before": before, "after": after})
    return burn_logs.put(season, burn_tests=[test | {"test": name} for name in LOGS], burn_cycles=burns)


def test_published_logs_typed_as_burns_have_the_published_slope(tmp_path, office):
    made = books.Book(published(), tmp_path / "published.xlsx")
    for values in (stored(made.path), office.recalculated(made.path)):
        for row, (_, _, slope, within, swing) in enumerate(LOGS.values()):
            rate, low, high = (values[made.cell("test_results", key, row)] for key in ("rate", "rate_low", "rate_high"))
            assert rate == pytest.approx(slope, abs=within)
            assert (low + high) / 2 == pytest.approx(rate)
            if swing:
                assert (high - low) / 2 / t_quantile(0.975, 4) == pytest.approx(swing, abs=within)

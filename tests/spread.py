"""How tests are spread over processes: what they share is made in one process, and what takes longest begins first."""

import face

# Files whose tests take longest together, the longest first: more than ten seconds of a processor each.
LONG = [
    "test_year_gestures.py", "test_make.py", "test_labels_season.py", "test_burning.py", "test_label_tabs.py",
    "test_earlier.py", "test_sales_gestures.py", "test_wiring_every_entry.py", "test_demo_year.py",
    "test_templates.py", "test_importing.py", "test_handover.py", "test_gestures.py", "test_season_after.py",
    "test_engines.py", "test_plan_tabs.py", "test_purchases.py", "test_add_functions.py", "test_cli.py",
    "test_bad_entries.py", "test_costs_of_tests.py", "test_explained.py", "test_burn_evening.py", "test_good_looks.py",
    "test_year_reference.py", "test_printing.py", "test_files.py", "test_types.py", "test_trace.py", "test_checks.py",
    "test_good_practice.py", "test_good_formulas.py", "test_libreoffice.py", "test_guard.py", "test_native.py",
]  # fmt: skip
OFFICE = "the office with the add-in"  # two faces share it
BESIDE = {"test_typing.py": "test_engines.py"}  # they ask offices of the same locales


def group(nodeid):
    """What a test should run beside in one process: its face, which calculates once, or its file's fixtures."""
    file, _, rest = nodeid.partition("::")
    faces = [name for name in face.FACES if name != "Python" and name in rest]
    if faces and "LibreOffice" in faces[0]:
        return OFFICE
    name = file.rpartition("/")[2]
    return faces[0] if faces else BESIDE.get(name, name)


def begins(item):
    """Where a test stands in the order in which groups are begun: long files, faces, the rest."""
    name = group(item.nodeid)
    return LONG.index(name) if name in LONG else len(LONG) + (name not in (OFFICE, *face.FACES))


def scheduler(config, log):
    from xdist.scheduler.loadscope import LoadScopeScheduling

    class Together(LoadScopeScheduling):
        def _split_scope(self, nodeid):
            return group(nodeid)

    config.option.loadscopereorder = False  # as they are collected, not the most tests first
    return Together(config, log)

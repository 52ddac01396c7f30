#!/usr/bin/env bash
# What the tests need on a fresh machine: .venv with the project in it, LibreOffice as the judge of workbooks, and
# programs for journals as the judges of what a bookkeeper is handed.
# What is there already is kept.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
root=$PWD

fail() {
    echo "setup: $*" >&2
    exit 1
}

new_enough() { # a command may be on the PATH and still not run, so it is tried
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null
}

find_python() {
    for candidate in python3 python3.13 python3.12 python3.11; do
        if new_enough "$candidate"; then
            echo "$candidate"
            return
        fi
    done
    fail "Python 3.11 or later is needed; found $(python3 --version 2>&1 || echo none)."
}

# Installed as a copy rather than in place, the tests would try an old version.
installed_in_place() {
    [ .venv/ready -nt pyproject.toml ] &&
        [ "$(cd / && "$root/.venv/bin/python" -c 'import candlecalc; print(candlecalc.__path__[0])' 2>/dev/null)" \
            = "$root/candlecalc" ]
}

python_with_uno() {
    for python in $(type -ap python3) "$(dirname "$(readlink -f "$(command -v soffice)")")/python"; do
        if "$python" -c 'import uno' 2>/dev/null; then return 0; fi
    done
    return 1
}

missing_packages() { # by their Debian names
    command -v soffice >/dev/null || echo libreoffice-calc
    python_with_uno || echo python3-uno
    command -v ssconvert >/dev/null || echo gnumeric
    command -v pdftotext >/dev/null || echo poppler-utils
    command -v hledger >/dev/null || echo hledger
    command -v ledger >/dev/null || echo ledger
    command -v fc-list >/dev/null || echo fontconfig
    fc-list : family 2>/dev/null | grep -q Carlito || echo fonts-crosextra-carlito
    "$python" -c 'import ensurepip' 2>/dev/null || echo python3-venv
}

install_packages() {
    local admin=()
    command -v apt-get >/dev/null || fail "install LibreOffice Calc with its Python bridge, poppler's tools, hledger," \
        "ledger and the font Carlito, then run this again. Missing, by their Debian names:" "$@"
    if [ "$(id -u)" != 0 ]; then
        sudo -n true 2>/dev/null || fail "run this first: sudo apt-get install" "$@"
        admin=(sudo -n)
    fi
    echo "setup: installing" "$@"
    "${admin[@]}" apt-get update -qq
    "${admin[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

python=$(find_python)
missing=$(missing_packages)
# shellcheck disable=SC2086  # a word a package
if [ -n "$missing" ]; then install_packages $missing; fi

if ! installed_in_place; then
    echo "setup: installing the project in .venv"
    "$python" -m venv --clear .venv # what the project no longer names goes too
    .venv/bin/python -m pip install --quiet --disable-pip-version-check -e ".[dev]"
    touch .venv/ready
fi

#!/usr/bin/env bash
# Every check, on a fresh clone too: bash tests/run.sh [arguments for pytest]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

# What Python compiled is kept, even where it is told not to: to compile the tests takes longer than to collect them.
export PYTHONDONTWRITEBYTECODE=

bash tests/setup.sh
.venv/bin/ruff check .
.venv/bin/ruff format --check .
.venv/bin/mypy
.venv/bin/python -m pytest -n 2 "$@"

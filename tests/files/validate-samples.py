#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every plan that is written is valid by the published JSON Schema, judged by
the independent validator python3-jsonschema; spoilt ones are not."""

import copy
import json
import pathlib
import subprocess
import sys
import tempfile

try:
    from jsonschema import Draft202012Validator
except ImportError:
    print("python3-jsonschema is not installed")
    sys.exit(77)


def spoil(plan):
    """The plan, spoilt in one way after another."""
    ways = {
        "newer": lambda p: p.update(version=2),
        "no uid": lambda p: p.pop("uid"),
        "no variant": lambda p: p.update(variants=[]),
        "day": lambda p: p.update(as_of="2026-13-01"),
        "unknown units": lambda p: p.setdefault("site", {}).update(units="cubits"),
        "cold": lambda p: p.setdefault("site", {}).update(coldest_night_c=-400),
        "half a bird": lambda p: p["batches"][0].update(females=0.5),
        "odd id": lambda p: p["batches"][0].update(id="Batch 1"),
        "thick wall": lambda p: p["variants"][0]["walls"][0].update(thickness_mm=5000),
        "no kind": lambda p: p["variants"][0]["openings"][0].pop("kind"),
        "locked by a number": lambda p: p["variants"][0]["pens"][0]["fittings"][0].update(locked=1),
    }
    for name, way in ways.items():
        spoilt = copy.deepcopy(plan)
        way(spoilt)
        yield name, spoilt


def main(schema_path, write_samples):
    schema = json.loads(pathlib.Path(schema_path).read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    faults = []
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([write_samples, folder], check=True)
        samples = sorted(pathlib.Path(folder).iterdir())
        for path in samples:
            plan = json.loads(path.read_text(encoding="utf-8"))
            faults += [f"{path.name}: {e.json_path}: {e.message}" for e in validator.iter_errors(plan)]
            if path.name == "many.hencote":
                faults += [f"{name}: not refused" for name, p in spoil(plan) if validator.is_valid(p)]
    print("\n".join(faults) or f"{len(samples)} plans are valid")
    return 1 if faults or not samples else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))

"""Makes the calls of a corpus in Python and says which end otherwise than in the add-in.

compare.py FOLDER: reads FOLDER/corpus.json, imports FOLDER/fieldsum_functions.py, and prints as JSON
for each function how many calls were made, how many gave a value, and the first that differ.
"""
import json
import sys
import time

folder = sys.argv[1]
sys.path.insert(0, folder)
import fieldsum_functions as functions  # noqa: E402

CLOSE = 1e-9
SHOWN = 3


def same(want, got):
    if isinstance(want, list):
        return isinstance(got, list) and len(want) == len(got) and all(map(same, want, got))
    if isinstance(want, bool) or isinstance(got, bool):
        return want is got
    if isinstance(want, (int, float)):
        if not isinstance(got, (int, float)):
            return False
        return want == got or abs(want - got) <= CLOSE * max(abs(want), abs(got))
    return type(want) is type(got) and want == got


def outcome(call):
    cells = [as_cell(cell) for cell in call["cells"]]
    try:
        return {"value": functions.FUNCTIONS[call["id"]](*cells)}
    except functions.CELL_ERROR as error:
        return {"code": error.code, "message": error.message}


def as_cell(cell):
    """Numbers come as the program hands them over: never as whole ones."""
    if isinstance(cell, list):
        return [as_cell(part) for part in cell]
    return float(cell) if type(cell) is int else cell


report = {}
started = time.process_time()
for call in json.load(open(folder + "/corpus.json", encoding="utf-8")):
    entry = report.setdefault(call["id"], {"calls": 0, "values": 0, "differ": 0, "first": []})
    want, got = call["outcome"], outcome(call)
    entry["calls"] += 1
    entry["values"] += "value" in want
    alike = same(want["value"], got.get("value")) if "value" in want and "value" in got else want == got
    if not alike:
        entry["differ"] += 1
        if len(entry["first"]) < SHOWN:
            entry["first"].append({"cells": call["cells"], "add-in": want, "here": got})
print(json.dumps({"seconds": time.process_time() - started, "functions": report}))

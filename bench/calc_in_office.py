"""calc_in_office.py EXTENSION CASES: milliseconds a cell of each formula in the real Calc, as JSON.

A case is a formula, the cells beside it and how many cells of the formula stand in a column: few enough
that a turn is seldom disturbed, enough that asking the program does not count. In the formula {row} is the
cell's own row, and Z1 a number that is another one each time the column is worked out.
"""
import json
import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../build/hosts/calc"))
from office import Office

SECONDS = 4


def column(office, case):
    document = office.open()
    document.enableAutomaticCalculation(False)
    sheet = document.Sheets.getByIndex(0)
    for place, rows in case["cells"].items():
        first = sheet.getCellRangeByName(place).CellAddress
        last = (first.Column + len(rows[0]) - 1, first.Row + len(rows) - 1)
        target = sheet.getCellRangeByPosition(first.Column, first.Row, *last)
        target.setDataArray(tuple(tuple(row) for row in rows))
    for row in range(case["count"]):
        cell = sheet.getCellByPosition(0, row)
        cell.FormulaLocal = case["formula"].replace("{row}", str(row + 1))
    changing = sheet.getCellRangeByName("Z1")
    best = float("inf")
    turn = 0
    until = time.time() + SECONDS
    # The fastest turn: all that disturbs one only makes it slower. The first loads the functions.
    while turn < 2 or time.time() < until:
        turn += 1
        changing.Value = turn / 1000
        started = time.perf_counter()
        document.calculateAll()
        best = min(best, time.perf_counter() - started)
    values = [sheet.getCellByPosition(0, row) for row in range(case["count"])]
    wrong = [cell.String for cell in values if cell.getError() != 0]
    if wrong:
        raise SystemExit("%s is %s" % (case["formula"], wrong[0]))
    if len({cell.Value for cell in values}) < case["count"]:
        raise SystemExit("%s gives a number twice: it may have been remembered" % case["formula"])
    document.close(True)
    return best / case["count"] * 1000


with open(sys.argv[2], encoding="utf-8") as file:
    cases = json.load(file)
with Office(sys.argv[1]) as office:
    print(json.dumps({name: column(office, case) for name, case in cases.items()}))

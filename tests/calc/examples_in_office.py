"""examples_in_office.py EXTENSION CASES: what the real Calc gives for formulas typed in cells, as JSON."""
import json
import os
import sys

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../../build/hosts/calc"))
from office import Office
from com.sun.star.beans import NamedValue


def shown(cell):
    if cell.getError() != 0:
        return {"error": cell.String}
    # Without a cell that holds text, the result is a number.
    return cell.Value if cell.FormulaResultType2 == 1 else cell.String


def table(cells):
    return [
        [shown(cells.getCellByPosition(column, row)) for column in range(cells.Columns.Count)]
        for row in range(cells.Rows.Count)
    ]


with open(sys.argv[2], encoding="utf-8") as file:
    cases = json.load(file)

told = []
with Office(sys.argv[1]) as office:
    menu = office.create("fieldsum.Menu")
    for case in cases:
        document = office.open()
        sheet = document.Sheets.getByIndex(0)
        cell = sheet.getCellByPosition(1, 1)
        cell.FormulaLocal = case["formula"]
        cell.getError()
        sentence = ""
        if case["spills"]:
            document.CurrentController.select(cell)
            sentence = menu.execute(
                (NamedValue("Document", document), NamedValue("Command", "spread"))
            )
        cursor = sheet.createCursorByRange(cell)
        if case["spills"]:
            cursor.collapseToCurrentArray()
        told.append({"sentence": sentence, "cells": table(cursor)})
        document.close(True)

print(json.dumps(told))

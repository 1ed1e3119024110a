"""own_workbooks_in_office.py EXTENSION CASES FOLDER: Calc's own workbooks in the real program, as JSON.

Each case is a workbook, changes to its named inputs, one after the other, and the names to read. Told
are the cells that show an error, and the named values as opened, after each change, and as saved in
FOLDER and opened again.
"""
import json
import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../../build/hosts/calc"))
from office import Office, address, value
from com.sun.star.sheet.FormulaResult import ERROR


def cells_of(document, name):
    return document.NamedRanges.getByName(name).getReferredCells()


def errors(document):
    """Where an error shows; the tables behind end in #N/A, and nobody sees them."""
    found = []
    for sheet in document.Sheets:
        if not sheet.IsVisible:
            continue
        for area in sheet.queryFormulaCells(ERROR).RangeAddresses:
            for row in range(area.StartRow, area.EndRow + 1):
                for column in range(area.StartColumn, area.EndColumn + 1):
                    cell = sheet.getCellByPosition(column, row)
                    at = "%s!%s" % (sheet.Name, cell.AbsoluteName.split(".")[-1].replace("$", ""))
                    found.append("%s %s %s" % (at, cell.String, cell.Formula))
    return found


def values(document, names):
    """What each name stands for: rows of values. An error comes as nothing, and is asked for."""
    found = {}
    for name in names:
        cells = cells_of(document, name)
        found[name] = [
            [
                {"error": cells.getCellByPosition(column, row).String} if shown is None else shown
                for column, shown in enumerate(shown_row)
            ]
            for row, shown_row in enumerate(cells.getDataArray())
        ]
    return found


def put(document, changes):
    for name, content in changes.items():
        cell = cells_of(document, name).getCellByPosition(0, 0)
        if isinstance(content, str):
            cell.String = content
        else:
            cell.Value = content


with open(sys.argv[2], encoding="utf-8") as file:
    cases = json.load(file)

told = []
with Office(sys.argv[1]) as office:
    for case in cases:
        started = time.time()
        document = office.open(case["path"])
        document.calculateAll()
        one = {"opened": values(document, case["names"]), "errors": [errors(document)], "changed": []}
        one["seconds to open"] = time.time() - started
        for changes in case["changes"]:
            started = time.time()
            put(document, changes)
            # Nothing is told to calculate: what depends on the inputs follows by itself.
            one["changed"].append(values(document, case["names"]))
            one["seconds to follow"] = time.time() - started
            one["errors"].append(errors(document))
        saved = os.path.join(sys.argv[3], os.path.basename(case["path"]))
        document.storeToURL(address(saved), (value("FilterName", "calc8"),))
        document.close(True)
        document = office.open(saved)
        document.calculateAll()
        one["again"] = values(document, case["names"])
        document.close(True)
        told.append(one)

print(json.dumps(told))

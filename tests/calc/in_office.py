"""in_office.py EXTENSION WORKBOOK: what the real Calc shows, as JSON."""
import json
import os
import sys

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../../build/hosts/calc"))
from office import Office


def place(document, name):
    """The one cell that a name stands for."""
    sheet, cell = document.NamedRanges.getByName(name).Content.replace("$", "").split(".")
    return document.Sheets.getByName(sheet.strip("'")).getCellRangeByName(cell)


with Office(sys.argv[1]) as office:
    document = office.open()
    cells = document.Sheets.getByIndex(0)
    typed = cells.getCellByPosition(0, 0)
    typed.FormulaLocal = '=IRRIG.PIPE.FRICTION(50;2.067;100;"US";150)'
    wrong = cells.getCellByPosition(0, 1)
    wrong.FormulaLocal = "=IRRIG.PIPE.FRICTION(50;-1;100)"
    told = {"typed": typed.Value, "wrong": wrong.String}
    document.close(True)

    document = office.open(sys.argv[2])
    place(document, "Spacing").Value = 40
    document.calculateAll()
    told["far"] = place(document, "FarPressure").Value
    document.close(True)

print(json.dumps(told))

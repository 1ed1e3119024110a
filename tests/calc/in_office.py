"""in_office.py EXTENSION WORKBOOK: what the real Calc shows, as JSON.

The extension is installed by the one command of the read-me, in a profile that is new.
"""
import json
import os
import sys

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../../build/hosts/calc"))
from office import Office
from com.sun.star.beans import NamedValue


def place(document, name):
    """The one cell that a name stands for."""
    sheet, cell = document.NamedRanges.getByName(name).Content.replace("$", "").split(".")
    return document.Sheets.getByName(sheet.strip("'")).getCellRangeByName(cell)


def wizard(office):
    """What the wizard and the hints say of our functions: help, and for each argument the same."""
    told = {}
    for function in office.create("com.sun.star.sheet.FunctionDescriptions"):
        entry = {one.Name: one.Value for one in function}
        if entry["Name"].startswith("IRRIG."):
            told[entry["Name"]] = {
                "help": entry["Description"],
                "arguments": [
                    [one.Name, one.Description, one.IsOptional] for one in entry["Arguments"]
                ],
            }
    return told


def menu(office):
    """The entries of our menu as the program has them: title and command."""
    provider = office.create("com.sun.star.configuration.ConfigurationProvider")
    path = NamedValue("nodepath", "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar")
    bar = provider.createInstanceWithArguments(
        "com.sun.star.configuration.ConfigurationAccess", (path,)
    )
    entries = bar.getByName("fieldsum.calc.menu").getByName("Submenu")
    named = [entries.getByName(name) for name in entries.ElementNames]
    return [[one.getByName("Title"), one.getByName("URL")] for one in named]


with Office(sys.argv[1]) as office:
    # The menu works on the document in front; a hidden one never is.
    document = office.desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, ())
    document.CurrentController.Frame.activate()
    cells = document.Sheets.getByIndex(0)
    typed = cells.getCellByPosition(0, 0)
    typed.FormulaLocal = '=IRRIG.PIPE.FRICTION(50;2.067;100;"US";150)'
    wrong = cells.getCellByPosition(0, 1)
    wrong.FormulaLocal = "=IRRIG.PIPE.FRICTION(50;-1;100)"
    told = {"typed": typed.Value, "wrong": wrong.String, "help": wizard(office), "menu": menu(office)}

    # As the menu does it: the frame is handed the entry's address.
    controller = document.CurrentController
    dispatch = office.create("com.sun.star.frame.DispatchHelper").executeDispatch
    table = cells.getCellByPosition(3, 0)
    table.FormulaLocal = "=IRRIG.SET.PLAN(2;14;11;0.75;24)"
    controller.select(table)
    dispatch(controller.Frame, "service:fieldsum.Menu?spread", "_self", 0, ())
    filled = cells.createCursorByRange(table)
    filled.collapseToCurrentArray()
    told["spread"] = [list(row) for row in filled.getDataArray()]

    # The entry shows a box; asked as a job, it hands the sentence back.
    controller.select(wrong)
    told["why"] = office.create("fieldsum.Menu").execute(
        (NamedValue("Document", document), NamedValue("Command", "why"))
    )
    document.close(True)

    document = office.open(sys.argv[2])
    told["line"] = []
    # The inlet is planned for the lowest pressure wanted: of another spacing it follows, and the last
    # head's pressure hardly; of another pressure wanted, both.
    for changes in ({}, {"Spacing": 40}, {"Lowest": 44}):
        for name, number in changes.items():
            place(document, name).Value = number
        told["line"].append([place(document, name).Value for name in ("Inlet", "FarPressure")])
    document.close(True)

print(json.dumps(told))

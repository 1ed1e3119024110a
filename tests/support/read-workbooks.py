"""Reads the workbooks named with openpyxl, every warning an error; prints their values as JSON."""
import json
import sys
import warnings

import openpyxl

warnings.simplefilter("error")
found = {}
for path in sys.argv[1:]:
    # Once with the formulas too: their reader is another part of it.
    openpyxl.load_workbook(path)
    book = openpyxl.load_workbook(path, data_only=True)
    found[path] = {
        sheet.title: {
            cell.coordinate: cell.value
            for row in sheet.iter_rows()
            for cell in row
            if cell.value not in (None, "")
        }
        for sheet in book
    }
json.dump(found, sys.stdout)

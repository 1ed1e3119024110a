"""workbooks_in_office.py EXTENSION WORKBOOK...: formula cells worked out again by the real Calc, as JSON.

Only cells that hold a formula are counted, each against the value that the file stores for it. The first
text of each table of ours is compared with what it says, as a formula beside it would.
"""
import json
import os
import sys
import zipfile
from xml.etree import ElementTree

sys.path.insert(0, os.path.join(os.path.dirname(__file__), "../../build/hosts/calc"))
from office import Office

# A page of our own, on which texts are compared.
ASKING = "Asking"
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
RELATION = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"


def stored(path):
    """(page, cell, formula, value, whether it fills cells) of every formula cell, as the file has them."""
    with zipfile.ZipFile(path) as book:
        targets = {
            one.get("Id"): one.get("Target").lstrip("/")
            for one in ElementTree.fromstring(book.read("xl/_rels/workbook.xml.rels"))
        }
        shared = []
        if "xl/sharedStrings.xml" in book.namelist():
            for entry in ElementTree.fromstring(book.read("xl/sharedStrings.xml")):
                shared.append("".join(text.text or "" for text in entry.iter(MAIN + "t")))
        for sheet in ElementTree.fromstring(book.read("xl/workbook.xml")).iter(MAIN + "sheet"):
            target = targets[sheet.get(RELATION)]
            if not target.startswith("xl/"):
                target = "xl/" + target
            for cell in ElementTree.fromstring(book.read(target)).iter(MAIN + "c"):
                formula = cell.find(MAIN + "f")
                if formula is None:
                    continue
                is_table = ":" in formula.get("ref", "")
                text = cell.findtext(MAIN + "v") or ""
                kind = cell.get("t", "n")
                found = float(text) if kind in ("n", "b") and text != "" else text
                if kind == "s":
                    found = shared[int(text)]
                yield sheet.get("name"), cell.get("r"), formula.text or "", found, is_table


def alike(wanted, cell):
    if isinstance(wanted, float):
        return abs(cell.Value - wanted) <= 1e-9 * max(abs(wanted), 1e-9)
    return cell.String == wanted


told = {}
with Office(sys.argv[1]) as office:
    for path in sys.argv[2:]:
        document = office.open(path)
        document.calculateAll()
        count = same = 0
        differ = []
        document.Sheets.insertNewByName(ASKING, document.Sheets.Count)
        asking = document.Sheets.getByName(ASKING).getCellByPosition(0, 0)
        texts = 0
        unlike = []
        for page, at, formula, wanted, is_table in stored(path):
            count += 1
            cell = document.Sheets.getByName(page).getCellRangeByName(at)
            where = "%s!%s" % (page, at)
            if cell.getError() == 0 and alike(wanted, cell):
                same += 1
            else:
                differ.append([where, formula, wanted, cell.String])
            is_ours = is_table and "_xldudf_" in formula and cell.getError() == 0
            if is_ours and isinstance(wanted, str) and wanted != "":
                texts += 1
                asking.Formula = "=$'%s'.%s=\"%s\"" % (page, at, wanted.replace('"', '""'))
                if asking.Value != 1:
                    unlike.append(where)
        told[os.path.basename(path)] = {
            "texts": texts,
            "unlike": unlike,
            "count": count,
            "same": same,
            "differ": differ,
        }
        document.close(True)

print(json.dumps(told))

"""What the extension does to a document: ask a cell again, spread a table, respell a file of ours."""
import re

from com.sun.star.sheet.CellFlags import ANNOTATION, DATETIME, FORMULA, STRING, VALUE
from com.sun.star.sheet.FormulaResult import ERROR
from com.sun.star.sheet.FormulaResult import STRING as TEXT_RESULT
from com.sun.star.sheet.FormulaResult import VALUE as NUMBER_RESULT
from fieldsum_catalogue import FUNCTIONS, NAMESPACE, SERVICE
from fieldsum_cells import asked

NO_MESSAGE = "No error in this cell comes from Fieldsum."
NO_TABLE = "This cell does not hold one of Fieldsum's functions that give a table."
NOT_A_SHEET = "Select a cell of a spreadsheet first."
# Cells that are looked at for where an error comes from.
MOST_CELLS = 200


# A function's name in formulas, as the program's own interface spells it, and as a file of the
# add-in does.
_STORED = {
    ("_xldudf_%s_%s" % (NAMESPACE, entry[0])).lower(): "%s.%s" % (SERVICE.upper(), method.upper())
    for method, entry in FUNCTIONS.items()
}
_STORED_NAME = re.compile(r"_xldudf_%s_[A-Za-z0-9_]+" % re.escape(NAMESPACE), re.I)
_TEXT = re.compile(r'("(?:[^"]|"")*")')


def respelled(formula):
    """The formula with our functions as this program knows them; text inside quotes stays."""
    def one(match):
        return _STORED.get(match.group(0).lower(), match.group(0))

    parts = _TEXT.split(formula)
    return "".join(part if i % 2 else _STORED_NAME.sub(one, part) for i, part in enumerate(parts))


def _formula_cells(sheet, kinds):
    for area in sheet.queryFormulaCells(kinds).RangeAddresses:
        for row in range(area.StartRow, area.EndRow + 1):
            for column in range(area.StartColumn, area.EndColumn + 1):
                yield sheet.getCellByPosition(column, row)


def _array_of(cell):
    """The cells that one array formula fills, this one among them."""
    cursor = cell.Spreadsheet.createCursorByRange(cell)
    cursor.collapseToCurrentArray()
    return cursor


def _is_many(cells):
    return cells.Rows.Count > 1 or cells.Columns.Count > 1


def _is_array(cell):
    return cell.Formula.startswith("{")


def _put(cell, formula):
    if _is_array(cell):
        _array_of(cell).setArrayFormula(formula)
    else:
        cell.setFormula(formula)


def _plain(formula):
    return formula[1:-1] if formula.startswith("{") else formula


# The page behind the workbooks of this program's own edition, whose formulas see to their texts.
_TABLES = "Tables"


def _with_texts(formula):
    """
    A table of ours whose texts can be compared: version 7.4 finds a text of an add-in's table equal to
    no other, and one that is joined to nothing an honest text. A formula there has no names, so the call is said three times.
    """
    call = formula[1:]
    return '=IF(ISTEXT(%s);%s&"";%s)' % (call, call, call)


_WITH_TEXTS = re.compile(r'=IF\(ISTEXT\((.+)\);\1&"";\1\)', re.S)


def respell(document):
    """Makes a workbook of the add-in's one of this program's; says how many formulas it changed."""
    changed = 0
    is_own = document.Sheets.hasByName(_TABLES)
    for sheet in document.Sheets:
        for cell in _formula_cells(sheet, VALUE_TEXT_ERROR):
            formula = cell.Formula
            if _STORED_NAME.search(formula) is None:
                continue
            new = respelled(_plain(formula))
            if new != _plain(formula):
                is_table = _is_array(cell) and _is_many(_array_of(cell))
                _put(cell, _with_texts(new) if is_table and not is_own else new)
                changed += 1
    for name in document.NamedRanges.ElementNames:
        named = document.NamedRanges.getByName(name)
        new = respelled(named.Content)
        if new != named.Content:
            named.setContent(new)
            changed += 1
    return changed


VALUE_TEXT_ERROR = NUMBER_RESULT | TEXT_RESULT | ERROR


class _Untouched:
    """Asks cells again without a step to undo, and without a document that seems changed."""

    def __init__(self, document):
        self.document = document

    def __enter__(self):
        self.modified = self.document.isModified()
        self.document.UndoManager.lock()

    def __exit__(self, *_):
        self.document.UndoManager.unlock()
        self.document.setModified(self.modified)


def _ask(document, cell):
    """Has the cell worked out again, and takes down what our functions say meanwhile."""
    asked.clear()
    with _Untouched(document):
        _put(cell, _plain(cell.Formula))
        # The program works a formula out when its result is wanted.
        cell.getError()
        cell.getString()


def why(document, cell):
    """The sentence behind a cell's error, or where it comes from."""
    if cell.getError() == 0:
        return NO_MESSAGE
    _ask(document, cell)
    if asked.errors:
        return asked.errors[0]
    # An error that is handed on from a cell that this one refers to.
    seen = 0
    for area in cell.queryPrecedents(True).RangeAddresses:
        sheet = document.Sheets.getByIndex(area.Sheet)
        for row in range(area.StartRow, area.EndRow + 1):
            for column in range(area.StartColumn, area.EndColumn + 1):
                seen += 1
                if seen > MOST_CELLS:
                    return NO_MESSAGE
                other = sheet.getCellByPosition(column, row)
                if other.getError() == 0 or other.Formula == "":
                    continue
                _ask(document, other)
                if asked.errors:
                    place = other.AbsoluteName.replace("$", "")
                    return "The error comes from %s. %s" % (place, asked.errors[0])
    return NO_MESSAGE


def spread(document, cell):
    """Lets the table of a cell's function fill as many cells as it has; says what went wrong, or ""."""
    formula = _plain(cell.Formula)
    joined = _WITH_TEXTS.fullmatch(formula)
    if not _is_one_call(formula if joined is None else "=" + joined.group(1)):
        return NO_TABLE
    _ask(document, cell)
    if asked.errors:
        return asked.errors[0]
    if len(asked.tables) == 0:
        return NO_TABLE
    rows, columns = asked.tables[-1]
    sheet = cell.Spreadsheet
    old = _array_of(cell).RangeAddress if _is_array(cell) else cell.RangeAddress
    left, top = old.StartColumn, old.StartRow
    target = sheet.getCellRangeByPosition(left, top, left + columns - 1, top + rows - 1)
    taken = _first_taken(sheet, target, old)
    if taken is not None:
        return "The table needs %d rows and %d columns, and %s is not empty." % (rows, columns, taken)
    undo = document.UndoManager
    undo.enterUndoContext("Spread a table")
    try:
        sheet.getCellRangeByPosition(left, top, old.EndColumn, old.EndRow).clearContents(FORMULA)
        target.setArrayFormula(formula)
    finally:
        undo.leaveUndoContext()
    document.CurrentController and document.CurrentController.select(target)
    return ""


def _is_one_call(formula):
    """Whether the formula is one function of ours and nothing around it."""
    match = re.match(r"=\s*(?:%s\.|%s\.)[\w.]+\s*\(" % (re.escape(NAMESPACE), re.escape(SERVICE)), formula, re.I)
    if match is None:
        return False
    depth = 0
    for i, part in enumerate(_TEXT.split(formula)):
        if i % 2:
            continue
        for j, sign in enumerate(part):
            depth += (sign == "(") - (sign == ")")
            if depth == 0 and sign == ")" and formula.rstrip().endswith(")"):
                return formula.rstrip() == "".join(_TEXT.split(formula)[:i]) + part[:j + 1]
    return False


def _first_taken(sheet, target, own):
    """The name of a cell in the way; those of the formula itself are not."""
    filled = target.queryContentCells(VALUE | DATETIME | STRING | FORMULA | ANNOTATION)
    for area in filled.RangeAddresses:
        for row in range(area.StartRow, area.EndRow + 1):
            for column in range(area.StartColumn, area.EndColumn + 1):
                is_own = (
                    own.StartRow <= row <= own.EndRow and own.StartColumn <= column <= own.EndColumn
                )
                if not is_own:
                    name = sheet.getCellByPosition(column, row).AbsoluteName
                    return name.split(".")[-1].replace("$", "")
    return None


def selected_cell(document):
    """The cell that the user stands on; None outside a sheet."""
    selection = document.getCurrentSelection() if document is not None else None
    if selection is None or not selection.supportsService("com.sun.star.sheet.SheetCellRange"):
        return None
    return selection.getCellByPosition(0, 0)

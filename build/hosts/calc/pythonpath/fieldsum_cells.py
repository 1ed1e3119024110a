"""Cells of the program in and out of the functions."""
import struct

from fieldsum_catalogue import FUNCTIONS


def _error(number):
    """An error of the program's is a number that is none, with the error's own bits."""
    return struct.unpack("<d", struct.pack("<Q", 0x7FF8000000000000 | number))[0]


VALUE = _error(519)
NOT_AVAILABLE = _error(32767)


class Asked:
    """What the functions said since it was last cleared: for the menu, which asks a cell again."""

    def __init__(self):
        self.clear()

    def clear(self):
        self.errors = []
        self.tables = []


asked = Asked()
_loaded = []


def _functions():
    if not _loaded:
        # Only now: a document without our functions should not wait for them.
        import fieldsum_functions

        _loaded.append(fieldsum_functions)
    return _loaded[0]


def _cell(value):
    if type(value) is tuple:
        return [[_cell(part) for part in row] for row in value]
    return value


def _argument(value, takes_range, yes_no):
    """As the add-in would be given it."""
    if value is None:
        return None
    given = _cell(value)
    if takes_range:
        return given if type(given) is list else [[given]]
    if type(given) is list and len(given) == 1 and len(given[0]) == 1:
        given = given[0][0]
    if yes_no and type(given) is float and given in (0.0, 1.0):
        return given == 1.0
    return given


def _out(value):
    if value is None:
        return ""
    return float(value) if type(value) in (int, bool) else value


def call(method, cells):
    identity, name, _, spills, parameters = FUNCTIONS[method]
    functions = _functions()
    given = [_argument(cell, one[3], one[4]) for cell, one in zip(cells, parameters)]
    try:
        result = functions.FUNCTIONS[identity](*given)
    except functions.CELL_ERROR as error:
        asked.errors.append("%s: %s" % (name, error.message))
        shown = NOT_AVAILABLE if error.code == "#N/A" else VALUE
        return ((shown,),) if spills else shown
    if not spills:
        return _out(result)
    asked.tables.append((len(result), len(result[0])))
    return tuple(tuple(_out(part) for part in row) for row in result)

"""save_as_ods.py EXTENSION FOLDER NAME...: the real Calc opens FOLDER/NAME.xlsx and saves FOLDER/NAME.ods."""
import os
import sys

from office import Office, address, value
from com.sun.star.table.CellVertJustify2 import CENTER

extension, folder, *names = sys.argv[1:]
with Office(extension) as office:
    for name in names:
        document = office.open(os.path.join(folder, name + ".xlsx"))
        if document.Sheets.hasByName("Tables"):
            tables = document.Sheets.getByName("Tables")
            tables.IsVisible = False
            # A hidden page is printed as well, unless it has no area to print.
            tables.setPrintAreas(())
        # Where a condition changes a cell's look, it takes from this style what it does not say itself: a
        # verdict would stand lower than its label.
        styles = document.StyleFamilies.getByName("CellStyles")
        styles.getByName("Default").VertJustify = CENTER
        document.calculateAll()
        document.storeToURL(address(os.path.join(folder, name + ".ods")), (value("FilterName", "calc8"),))
        document.close(True)

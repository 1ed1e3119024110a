"""The extension as the program meets it: the functions, the menu, and what runs on a loaded document."""
import unohelper
from com.sun.star.awt.MessageBoxType import INFOBOX
from com.sun.star.lang import XServiceInfo, XServiceName
from com.sun.star.sheet import XAddIn
from com.sun.star.task import XJob, XJobExecutor
from fieldsum import XFunctions
from fieldsum_catalogue import FUNCTIONS, SERVICE

import fieldsum_cells

IMPLEMENTATION = SERVICE + "Implementation"
MENU = "fieldsum.Menu"
OPENED = "fieldsum.Opened"

_BY_NAME = {entry[1]: method for method, entry in FUNCTIONS.items()}


class Functions(unohelper.Base, XFunctions, XAddIn, XServiceName, XServiceInfo):
    def __init__(self, context, *_):
        self.locale = None

    def getServiceName(self):
        return SERVICE

    def getImplementationName(self):
        return IMPLEMENTATION

    def supportsService(self, name):
        return name in self.getSupportedServiceNames()

    def getSupportedServiceNames(self):
        return (SERVICE, "com.sun.star.sheet.AddIn")

    def setLocale(self, locale):
        self.locale = locale

    def getLocale(self):
        return self.locale

    # The interface's own spelling.
    def getProgrammaticFuntionName(self, display_name):
        return _BY_NAME.get(display_name, "")

    def getDisplayFunctionName(self, method):
        return FUNCTIONS[method][1] if method in FUNCTIONS else ""

    def getFunctionDescription(self, method):
        return FUNCTIONS[method][2] if method in FUNCTIONS else ""

    def getDisplayArgumentName(self, method, place):
        return _argument_text(method, place, 0)

    def getArgumentDescription(self, method, place):
        return _argument_text(method, place, 1)

    def getProgrammaticCategoryName(self, method):
        return "Add-In"

    def getDisplayCategoryName(self, method):
        return "Add-In"


def _argument_text(method, place, which):
    parameters = FUNCTIONS[method][4] if method in FUNCTIONS else []
    return parameters[place][which] if 0 <= place < len(parameters) else ""


def _method(name):
    def run(self, *cells):
        return fieldsum_cells.call(name, cells)

    run.__name__ = name
    return run


for _name in FUNCTIONS:
    setattr(Functions, _name, _method(_name))


class _Service(unohelper.Base, XServiceInfo):
    service = ""

    def __init__(self, context, *_):
        self.context = context

    def getImplementationName(self):
        return self.service + "Implementation"

    def supportsService(self, name):
        return name == self.service

    def getSupportedServiceNames(self):
        return (self.service,)


class Menu(_Service, XJobExecutor, XJob):
    """The menu's entries. As a job, it hands the sentence back instead of showing it."""

    service = MENU

    def trigger(self, command):
        document = self._document()
        sentence = self._run(document, command)
        if sentence != "":
            window = document.CurrentController.Frame.ContainerWindow
            # 1 is the button OK.
            window.Toolkit.createMessageBox(window, INFOBOX, 1, "Fieldsum", sentence).execute()

    def execute(self, arguments):
        given = {argument.Name: argument.Value for argument in arguments}
        return self._run(given.get("Document") or self._document(), given["Command"])

    def _document(self):
        desktop = self.context.ServiceManager.createInstanceWithContext(
            "com.sun.star.frame.Desktop", self.context
        )
        return desktop.getCurrentComponent()

    def _run(self, document, command):
        import fieldsum_document

        cell = fieldsum_document.selected_cell(document)
        if cell is None:
            return fieldsum_document.NOT_A_SHEET
        run = fieldsum_document.spread if command == "spread" else fieldsum_document.why
        return run(document, cell)


class Opened(_Service, XJob):
    """A workbook that the add-in's host saved names our functions in that host's way."""

    service = OPENED

    def execute(self, arguments):
        environment = {
            entry.Name: entry.Value
            for argument in arguments
            if argument.Name == "Environment"
            for entry in argument.Value
        }
        document = environment.get("Model")
        if document is None or not document.supportsService(
            "com.sun.star.sheet.SpreadsheetDocument"
        ):
            return
        if (document.URL or "").lower().endswith((".xlsx", ".xlsm")):
            import fieldsum_document

            fieldsum_document.respell(document)


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Functions, IMPLEMENTATION, (SERVICE,))
for _job in (Menu, Opened):
    g_ImplementationHelper.addImplementation(
        _job, _job.service + "Implementation", (_job.service,)
    )

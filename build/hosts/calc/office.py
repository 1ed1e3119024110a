"""A real Calc without a window, in a profile of its own, with the extension installed."""
import os
import shutil
import subprocess
import tempfile
import time
import uuid

import uno
import unohelper
from com.sun.star.task import XInteractionHandler
from com.sun.star.ucb import XCommandEnvironment, XProgressHandler
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException

PATIENCE = 120
_APPROVE = uno.getTypeByName("com.sun.star.task.XInteractionApprove")


def value(name, content):
    return PropertyValue(Name=name, Value=content)


def address(path):
    return uno.systemPathToFileUrl(os.path.abspath(path))


class _Unattended(unohelper.Base, XCommandEnvironment, XInteractionHandler, XProgressHandler):
    """Says yes to what an installation asks."""

    def getInteractionHandler(self):
        return self

    def getProgressHandler(self):
        return self

    def handle(self, request):
        for answer in request.getContinuations():
            if answer.queryInterface(_APPROVE) is not None:
                answer.select()

    def push(self, status):
        pass

    def update(self, status):
        pass

    def pop(self):
        pass


class Office:
    def __init__(self, extension=None):
        self.folder = tempfile.mkdtemp(prefix="fieldsum-office-")
        self.profile = "-env:UserInstallation=" + address(os.path.join(self.folder, "profile"))
        self.process = None
        self.extension = extension

    def __enter__(self):
        self._start()
        if self.extension is not None:
            # What unopkg does; that command refuses the superuser, as which builds often run.
            manager = self.context.getByName(
                "/singletons/com.sun.star.deployment.ExtensionManager"
            )
            abort = manager.createAbortChannel()
            manager.addExtension(address(self.extension), (), "user", abort, _Unattended())
            self._stop()
            self._start()
        return self

    def __exit__(self, *_):
        try:
            self._stop()
        finally:
            shutil.rmtree(self.folder, ignore_errors=True)

    def _start(self):
        pipe = "fieldsum" + uuid.uuid4().hex
        self.process = subprocess.Popen(
            [
                "soffice",
                self.profile,
                "--headless",
                "--norestore",
                "--nologo",
                "--accept=pipe,name=%s;urp;StarOffice.ComponentContext" % pipe,
            ],
            stdout=subprocess.DEVNULL,
        )
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext(
            "com.sun.star.bridge.UnoUrlResolver", local
        )
        until = time.time() + PATIENCE
        while True:
            try:
                self.context = resolver.resolve(
                    "uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe
                )
                break
            except NoConnectException:
                if time.time() > until or self.process.poll() is not None:
                    raise
                time.sleep(0.2)
        self.desktop = self.create("com.sun.star.frame.Desktop")

    def _stop(self):
        try:
            self.desktop.terminate()
        except Exception:
            # It is gone before it has answered.
            pass
        self.process.wait(PATIENCE)

    def create(self, service):
        return self.context.ServiceManager.createInstanceWithContext(service, self.context)

    def open(self, path=None):
        where = "private:factory/scalc" if path is None else address(path)
        return self.desktop.loadComponentFromURL(where, "_blank", 0, (value("Hidden", True),))

"""A real Calc without a window, in a profile of its own, with the extension installed.

office.py EXTENSION: starts one, prints the name of its pipe and keeps it until the input ends. Scripts that
find this name in the environment use that one in place of one of their own.
"""
import os
import shutil
import subprocess
import sys
import tempfile
import time
import uuid

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException

PATIENCE = 120
STARTED = "FIELDSUM_OFFICE"
NOBODY = 65534


def value(name, content):
    return PropertyValue(Name=name, Value=content)


def address(path):
    return uno.systemPathToFileUrl(os.path.abspath(path))


class Office:
    def __init__(self, extension=None):
        self.pipe = os.environ.get(STARTED)
        self.is_own = self.pipe is None
        self.extension = extension

    def __enter__(self):
        if self.is_own:
            self.pipe = "fieldsum" + uuid.uuid4().hex
            self.folder = tempfile.mkdtemp(prefix="fieldsum-office-")
            self.profile = "-env:UserInstallation=" + address(os.path.join(self.folder, "profile"))
            if self.extension is not None:
                self._install()
            self._start()
        self._connect()
        return self

    def _install(self):
        """By the command that the read-me gives. It refuses the superuser, as which builds often run."""
        copy = shutil.copy(self.extension, self.folder)
        command = ["unopkg", "add", self.profile, copy]
        if os.getuid() == 0:
            os.chown(self.folder, NOBODY, NOBODY)
            os.chmod(copy, 0o644)
            ids = ["--reuid=%d" % NOBODY, "--regid=%d" % NOBODY, "--clear-groups"]
            command = ["setpriv", *ids, *command]
        subprocess.run(
            command,
            check=True,
            env={**os.environ, "HOME": self.folder},
            cwd=self.folder,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            timeout=PATIENCE,
        )

    def __exit__(self, *_):
        if not self.is_own:
            return
        try:
            self._stop()
        finally:
            shutil.rmtree(self.folder, ignore_errors=True)

    def _start(self):
        self.process = subprocess.Popen(
            [
                "soffice",
                self.profile,
                "--headless",
                "--norestore",
                "--nologo",
                "--accept=pipe,name=%s;urp;StarOffice.ComponentContext" % self.pipe,
            ],
            stdout=subprocess.DEVNULL,
        )

    def _connect(self):
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext(
            "com.sun.star.bridge.UnoUrlResolver", local
        )
        until = time.time() + PATIENCE
        while True:
            try:
                self.context = resolver.resolve(
                    "uno:pipe,name=%s;urp;StarOffice.ComponentContext" % self.pipe
                )
                break
            except NoConnectException:
                has_ended = self.is_own and self.process.poll() is not None
                if time.time() > until or has_ended:
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


if __name__ == "__main__":
    with Office(sys.argv[1]) as office:
        print(office.pipe, flush=True)
        sys.stdin.read()

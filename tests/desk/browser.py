"""The real command with a real browser before it, and somebody at the keyboard whose keystrokes are counted."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import threading
from pathlib import Path
from types import TracebackType
from typing import Any, Self

from selenium import webdriver
from selenium.common.exceptions import NoSuchElementException, StaleElementReferenceException
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import WebDriverWait

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DRIVER = shutil.which("chromedriver")
PATIENCE = 20.0


def missing() -> str:
    """Why no browser can be driven here; "" where one can."""
    if not CHROMIUM:
        return "chromium is not installed (Debian: apt-get install chromium chromium-driver)"
    return "" if DRIVER else "chromedriver is not installed (Debian: apt-get install chromium-driver)"


def chromium(profile: Path, *, width: int = 1280, height: int = 900, dark: bool = False) -> webdriver.Chrome:
    """A browser without a window and with a profile of its own."""
    options = webdriver.ChromeOptions()
    options.binary_location = CHROMIUM or ""
    arguments = ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run"]
    arguments += [f"--user-data-dir={profile}", f"--window-size={width},{height}", "--hide-scrollbars"]
    for argument in arguments:
        options.add_argument(argument)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    driver = webdriver.Chrome(options=options, service=webdriver.ChromeService(DRIVER or ""))
    driver.set_page_load_timeout(60)
    if dark:
        features = [{"name": "prefers-color-scheme", "value": "dark"}]
        driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": features})
    return driver


class Running:
    """`onebasis review` as a user starts it. Leaving the ``with`` block stops it."""

    def __init__(self, folder: Path) -> None:
        command = [sys.executable, "-m", "importer", "review", "--store", str(folder), "--no-browser"]
        self._process = subprocess.Popen(command, stderr=subprocess.PIPE, text=True, cwd=Path(__file__).parents[2])
        assert self._process.stderr is not None
        told = self._process.stderr.readline()
        found = re.search(r"http://\S+", told)
        assert found, told
        self.address = found[0]
        self.errors: list[str] = []
        self._listener = threading.Thread(target=self._listen, daemon=True)
        self._listener.start()

    def _listen(self) -> None:
        assert self._process.stderr is not None
        with self._process.stderr as stream:
            self.errors += stream.readlines()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._process.terminate()
        self._process.wait(timeout=20)
        self._listener.join(timeout=20)
        assert not self._listener.is_alive(), "something of the desk goes on after its end"


class Person:
    """Somebody at the keyboard. ``strokes`` counts every key that was pressed since the name was typed."""

    def __init__(self, driver: webdriver.Chrome, address: str, name: str = "Anna Holt") -> None:
        self.driver = driver
        self.home = address.partition("?")[0]
        driver.delete_all_cookies()
        driver.get(address)
        if driver.find_elements(By.ID, "name"):
            self._type(f"{name}\n")
            self.wait("no name page", lambda: not driver.find_elements(By.ID, "name"))
        self.complaints()  # of whoever was here before
        self.strokes = 0

    def _type(self, keys: str) -> None:
        for key in keys:
            ActionChains(self.driver).send_keys("\ue007" if key == "\n" else key).perform()

    def press(self, keys: str) -> None:
        """Presses keys one after another; a line break is Enter."""
        self.strokes += len(keys)
        self._type(keys)

    def go(self, keys: str) -> None:
        """Presses keys that lead to another page, and waits for it."""
        before = self.driver.find_element(By.TAG_NAME, "html").id
        self.press(keys)
        self.wait(f"a page after {keys!r}", lambda: self._is_new(before))

    def _is_new(self, before: str) -> bool:
        found = self.driver.find_elements(By.TAG_NAME, "html")
        ready = self.driver.execute_script("return document.readyState") == "complete"
        return bool(found) and found[0].id != before and ready

    def wait(self, what: str, holds: Any) -> None:
        gone = (StaleElementReferenceException, NoSuchElementException)  # the page is just being exchanged
        WebDriverWait(self.driver, PATIENCE, poll_frequency=0.05, ignored_exceptions=gone).until(
            lambda _: holds(), what
        )

    @property
    def text(self) -> str:
        return self.driver.find_element(By.TAG_NAME, "body").text

    @property
    def where(self) -> str:
        return self.driver.current_url.removeprefix(self.home.rstrip("/")).partition("?")[0]

    def complaints(self) -> list[str]:
        """What the browser has to say against the pages: errors of scripts, and breaches of the policy."""
        entries = self.driver.get_log("browser")  # type: ignore[no-untyped-call]
        return [entry["message"] for entry in entries if entry["level"] in ("SEVERE", "WARNING")]

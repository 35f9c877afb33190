"""From the opened address to the export, in a real browser: mostly with the keyboard alone."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest

selenium = pytest.importorskip("selenium", reason="selenium is not installed")

import pypdfium2  # noqa: E402
from selenium import webdriver  # noqa: E402
from selenium.webdriver.common.actions.action_builder import ActionBuilder  # noqa: E402
from selenium.webdriver.common.by import By  # noqa: E402

from importer.models import Analysis  # noqa: E402
from importer.store.ledger import Store  # noqa: E402
from importer.store.selection import Wanted, choose  # noqa: E402
from tests.desk import browser  # noqa: E402
from tests.desk.browser import Person, Running  # noqa: E402
from tests.desk.sheets import SOUND, Row, changed, draw, take_in, two_columns  # noqa: E402
from tests.desk.test_security import HOSTILE  # noqa: E402
from tests.desk.test_settling import figure  # noqa: E402
from tests.scans.degrade import MASTER_DPI, degrade  # noqa: E402
from tests.scans.degrade import stored as stored_picture  # noqa: E402

FIXTURES = Path(__file__).parents[2] / "fixtures"
pytestmark = [
    pytest.mark.skipif(bool(browser.missing()), reason=browser.missing() or "there is one"),
    pytest.mark.timeout(300),
]
LONG: tuple[Row, ...] = (
    ("Moisture", "45", "%"),
    ("Extract, fine grind, dry", "82.0", "%"),
    ("Extract, coarse grind, dry", "80.4", "%"),
    ("Colour", "5.2", ""),
    ("Colour after boiling", "7.1", "EBC"),
    ("Total nitrogen, dry", "1.60", "%"),
    ("Nitrogen", "0.65", "%"),
    ("Kolbach index", "40.6", "%"),
    ("Free amino nitrogen", "150", "mg/l"),
    ("Friability", "88", "%"),
    ("Homogeneity", "98.2", "%"),
    ("Whole grains", "1.2", "%"),
    ("Diastatic power", "280", "WK"),
    ("Viscosity", "1.52", "mPa·s"),
    ("Saccharification time", "12", "min"),
    ("Wort pH", "5.92", ""),
    ("Final attenuation", "81.5", "%"),
    ("Sieve > 2.8 mm", "62.0", "%"),
    ("Thousand corn weight", "38.5", "g"),
    ("Hectolitre weight", "56.0", "kg/hl"),
)


@pytest.fixture(scope="module")
def driver(tmp_path_factory: pytest.TempPathFactory) -> Iterator[webdriver.Chrome]:
    started = browser.chromium(tmp_path_factory.mktemp("profile"))
    yield started
    started.quit()


def stored(folder: Path, batch: str = "") -> Analysis:
    with Store(folder) as store:
        return choose(store, Wanted(batch=batch or None)).analyses[0]


def on_screen(driver: webdriver.Chrome, x: float, y: float) -> tuple[int, int]:
    """Where a point of the drawn page is in the window."""
    place = "const p = new DOMPoint(arguments[0], arguments[1]).matrixTransform("
    place += "document.querySelector('svg.draw').getScreenCTM()); return [p.x, p.y];"
    left, top = driver.execute_script(place, x, y)
    return round(left), round(top)


def settle_everything(person: Person, most: int = 40) -> None:
    """What a person would do who trusts each value that is suggested: take it where there is one, else accept."""
    for _ in range(most):
        if "Nothing waits" in person.text:
            return
        if person.driver.find_elements(By.CSS_SELECTOR, '.choices input[name="value"] ~ button[data-key="1"]'):
            person.go("1")
        elif person.driver.find_elements(By.CSS_SELECTOR, '[data-key~="Enter"]'):
            person.go("\n")
        else:
            person.go("A")
    raise AssertionError(f"still waiting at {person.where}: {person.text[:500]}")


@pytest.mark.ocr
def test_a_scan_is_settled_from_start_to_end_with_the_keyboard_alone(driver: webdriver.Chrome, tmp_path: Path) -> None:
    folder = take_in(tmp_path / "store", FIXTURES / "demo" / "harzbrunn-roestmalz-scan.jpg", filed=False)
    before = stored(folder)
    assert any(entry.state == "review" for entry in before.header.values())
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        settle_everything(person)
        print(f"\nscan of {len(before.figures)} figures: {person.strokes} keystrokes")
        assert person.strokes < 10
    after = stored(folder)
    assert {one.state for one in (*after.figures, *after.header.values())} == {"accepted"}
    truth = json.loads((FIXTURES / "truth" / "harzbrunn-roestmalz-scan.json").read_text(encoding="utf-8"))
    (printed,) = truth["analyses"]
    for one in printed["figures"]:
        found = figure(after, one["parameter"])
        assert found.state == "accepted"
        assert found.printed is not None
        assert found.printed.value == one["value"]


def test_a_sheet_of_twenty_figures_with_three_in_doubt_takes_fewer_than_ten_keys(
    driver: webdriver.Chrome, tmp_path: Path
) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", LONG))
    before = stored(folder)
    assert len(before.figures) == 20
    assert sum(one.state == "review" for one in before.figures) == 3
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        settle_everything(person)
    keyed = sum(len(value) + 1 for _, value, _ in LONG)
    print(f"\n20 figures, 3 in doubt: {person.strokes} keystrokes; keying the values alone: {keyed}")
    assert person.strokes < 10
    assert stored(folder).state == "accepted"
    assert figure(stored(folder), "moisture").value == 4.5
    assert figure(stored(folder), "soluble_nitrogen").value == 0.65


@pytest.mark.ocr
@pytest.mark.parametrize("way", ["jpeg30", "skew", "noiseblur"])
def test_a_scan_of_twenty_figures_takes_fewer_than_ten_keys(driver: webdriver.Chrome, tmp_path: Path, way: str) -> None:
    """The same sheet as a scanner delivers it: three figures in doubt by what is printed, and what the scan adds."""
    folder = take_in(tmp_path / "store", scanned(draw(tmp_path / "sheet.pdf", LONG), way))
    before = stored(folder)
    assert before.source.reading == "ocr"
    assert len(before.figures) == 20
    doubtful = sum(one.state == "review" for one in before.figures)
    assert doubtful >= 3
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        settle_everything(person)
    keyed = sum(len(value) + 1 for _, value, _ in LONG)
    print(f"\nscan ({way}) of 20 figures, {doubtful} and the head in doubt: {person.strokes} keystrokes, not {keyed}")
    assert person.strokes < 10
    after = stored(folder)
    assert {one.state for one in (*after.figures, *after.header.values())} == {"accepted"}
    assert [one.printed.value for one in after.figures if one.printed] == [value for _, value, _ in LONG]
    assert figure(after, "moisture").value == 4.5
    assert figure(after, "soluble_nitrogen").value == 0.65


def scanned(sheet: Path, way: str) -> Path:
    """The page of a sheet as it arrives by way of a scanner."""
    with pypdfium2.PdfDocument(sheet) as document:
        page = document[0].render(scale=MASTER_DPI / 72).to_pil()
    scan = sheet.with_suffix(".tif")
    scan.write_bytes(stored_picture(degrade(page, way, 1)))
    return scan


def test_a_lost_decimal_point_is_typed_in_and_taken_back(driver: webdriver.Chrome, tmp_path: Path) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n")
        assert "45 % is not possible for Moisture." in person.text
        person.press("\n")  # nothing happens: what no malt has is not accepted by a slip
        assert person.where.endswith("/0")
        person.go("c\n")  # nor by saving it as it is
        assert "Nothing was changed" in person.text
        assert all("422" in told for told in person.complaints())
        person.go("c4.5\n")
        assert "Nothing waits" in person.text
        assert figure(stored(folder), "moisture").value == 4.5
        person.go("u")
        assert "Taken back" in person.text
        assert figure(stored(folder), "moisture").state == "review"
        person.go("1")
        assert figure(stored(folder), "moisture").value == 4.5
        assert person.complaints() == []


def test_a_label_is_taught_and_the_next_sheet_is_accepted(driver: webdriver.Chrome, tmp_path: Path) -> None:
    odd = changed("Soluble nitrogen, dry", "0.65", rename="Nitrogen")
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", odd))
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n")
        assert "soluble nitrogen" in person.text.lower()
        person.go("\n")
        assert "Nothing waits" in person.text
        take_in(folder, draw(tmp_path / "second.pdf", odd, batch="N-1042"))
        second = stored(folder, "1042")
        assert second.state == "accepted"
        assert figure(second, "soluble_nitrogen").value == 0.65
        driver.get(f"{person.home}learned")
        assert "Nordtal Malting" in person.text
        assert "Nitrogen" in person.text


def test_two_windows_lose_nothing(driver: webdriver.Chrome, tmp_path: Path) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n")
        page, first = driver.current_url, driver.current_window_handle
        driver.switch_to.new_window("tab")
        driver.get(page)
        person.go("c4.5\n")
        driver.close()
        driver.switch_to.window(first)
        person.go("c4.7\n")
        assert "Somebody else has changed this sheet" in person.text
        assert driver.find_element(By.ID, "value").get_attribute("value") == "4.7"
        assert figure(stored(folder), "moisture").value == 4.5
        person.go("c4.7\n")
        assert figure(stored(folder), "moisture").value == 4.7


def test_a_hostile_label_is_only_text(driver: webdriver.Chrome, tmp_path: Path) -> None:
    rows = (*changed("Colour", "5.2", rename=f"Colour {HOSTILE}", unit=""), ("Moisture " + HOSTILE, "4.5", "%"))
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows, malt=f"Pale {HOSTILE[:20]}"))
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        for address in ("", f"batch/{identity}", *(f"sheet/{identity}/{row}" for row in range(9))):
            driver.get(person.home + address)
            assert driver.execute_script("return document.querySelectorAll('script').length") == 1
            assert driver.execute_script("return document.querySelectorAll('img').length") == 0
        driver.get(f"{person.home}batch/{identity}")
        assert "<script>alert(1)</script>" in person.text
        assert person.complaints() == []


def test_a_key_held_down_settles_one_figure(driver: webdriver.Chrome, tmp_path: Path) -> None:
    sheets = [
        draw(
            tmp_path / f"{n}.pdf", changed("Colour", "5.2", unit=""), batch=f"N-10{n}1", supplier=f"Malting {'ABCD'[n]}"
        )
        for n in range(4)
    ]
    folder = take_in(tmp_path / "store", *sheets)
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n")
        held = {"key": "Enter", "code": "Enter", "windowsVirtualKeyCode": 13, "text": "\r"}
        for repeat in (False, True, True, True, True):
            driver.execute_cdp_cmd("Input.dispatchKeyEvent", {"type": "keyDown", "autoRepeat": repeat, **held})
        driver.execute_cdp_cmd("Input.dispatchKeyEvent", {"type": "keyUp", **held})
        person.wait("the next sheet", lambda: "Saved" in person.text)
        with Store(folder) as store:
            assert store.connection.execute("SELECT COUNT(*) FROM corrections").fetchone() == (1,)


def test_a_missing_row_is_drawn_and_added(driver: webdriver.Chrome, tmp_path: Path) -> None:
    rows = (*SOUND, ("Something of our own", "5.9", ""))
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows))
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        driver.get(f"{person.home}sheet/{identity}/missing")
        # The last row as `draw` places it: so many points above the foot of an A4 page.
        middle = 841.89 - (780 - 4 * 20 - 50 - 9 * 22) - 4
        actions = ActionBuilder(driver)
        actions.pointer_action.move_to_location(*on_screen(driver, 50, middle - 9)).pointer_down()
        actions.pointer_action.move_to_location(*on_screen(driver, 480, middle + 9)).pointer_up()
        actions.perform()
        person.wait("what was read", lambda: driver.find_element(By.ID, "value").get_attribute("value"))
        assert driver.find_element(By.ID, "label").get_attribute("value") == "Something of our own"
        assert driver.find_element(By.ID, "value").get_attribute("value") == "5.9"
        driver.execute_script("document.getElementById('parameter').value = 'wort_ph'")
        driver.find_element(By.CSS_SELECTOR, "form:last-of-type button.main").click()
        person.wait("the row", lambda: "Settled" in person.text)
    assert figure(stored(folder), "wort_ph").value == 5.9


@pytest.mark.parametrize(("width", "height"), [(1280, 800), (820, 1180), (390, 844)])
def test_nothing_runs_off_the_side(driver: webdriver.Chrome, tmp_path: Path, width: int, height: int) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))
    metrics = {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 800}
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", metrics)
        try:
            with Store(folder) as store:
                (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
            for address in ("", f"sheet/{identity}/0", f"sheet/{identity}/head", f"batch/{identity}", "learned"):
                driver.get(person.home + address)
                wide = driver.execute_script("return document.documentElement.scrollWidth")
                assert wide <= width, f"{address}: {wide}"
        finally:
            driver.execute_cdp_cmd("Emulation.clearDeviceMetricsOverride", {})


def test_everything_that_can_be_used_has_a_name(driver: webdriver.Chrome, tmp_path: Path) -> None:
    """WCAG 2.2, 4.1.2 (name, role, value) and 1.1.1 (text alternatives), for every control and picture."""
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))
    unnamed = """
      const all = document.querySelectorAll('input:not([type=hidden]), select, button, a[href], svg, dialog');
      return [...all].filter((e) => {
        if (e.getAttribute('aria-hidden') === 'true') return false;
        const labels = e.labels ? [...e.labels].map((l) => l.textContent).join('') : '';
        const by = e.getAttribute('aria-labelledby');
        const named = labels || e.getAttribute('aria-label') || (by && document.getElementById(by).textContent);
        return !(named || e.textContent || '').trim();
      }).map((e) => e.outerHTML);
    """
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        for address in (
            "",
            f"sheet/{identity}/0",
            f"sheet/{identity}/head",
            f"sheet/{identity}/missing",
            "learned",
            "who",
        ):
            driver.get(person.home + address)
            assert (
                driver.execute_script(unnamed.replace("|| e.textContent).trim()", "|| e.textContent || '').trim()"))
                == []
            )
            assert driver.execute_script("return document.documentElement.lang") == "en"
            assert len(driver.find_elements(By.TAG_NAME, "h1")) == 1


def test_a_row_without_a_parameter_is_settled_with_one_key_or_named(driver: webdriver.Chrome, tmp_path: Path) -> None:
    rows = (*changed("Colour", "5.2", unit=""), ("Zorblax index", "3.7", "%"), ("Quibble of wort", "5.9", ""))
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows))
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n\n")
        person.wait("the first row", lambda: "Zorblax" in person.text)
        person.go("x")
        assert "Quibble" in person.text
        assert "3 of 3" not in person.text
        person.press("l")
        person.press("Wort pH")
        person.go("\n")
        assert "Nothing waits" in person.text
        assert person.complaints() == []
    assert figure(stored(folder), "wort_ph").value == 5.9
    assert stored(folder).unrecognised == ()


def test_a_column_in_doubt_is_settled_with_one_key(driver: webdriver.Chrome, tmp_path: Path) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf"))
    with Running(folder) as desk:
        person = Person(driver, desk.address)
        person.go("\n")
        assert "Laboratory A" in person.text
        person.go("k")
        assert "Nothing waits" in person.text
        assert person.strokes == 2
        take_in(folder, two_columns(tmp_path / "second.pdf", batch="N-1042"))
        assert stored(folder, "1042").state == "accepted"
        assert person.complaints() == []

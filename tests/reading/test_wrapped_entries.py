"""Names that run over several lines in the boxes of a form."""

from __future__ import annotations

from importer.layout.lines import find_lines
from importer.layout.wrapped_entries import with_captions_apart, with_entries_whole
from importer.meaning.terms import SheetTerms
from importer.words import Page, Word

SIZE = 10.0


def _texts(*placed: tuple[str, float, float]) -> list[str]:
    """The lines of texts that begin at (x, top), each letter 5 points wide, with the names in boxes made whole."""
    words = []
    for text, x, top in placed:
        for word in text.split():
            words.append(Word(word, x, top, x + 5.0 * len(word), top + SIZE, size=SIZE))
            x += 5.0 * len(word) + 2.5
    lines = find_lines(Page(1, 595, 842, tuple(words), "text"))
    return [" | ".join(cell.text for cell in line.cells) for line in with_entries_whole(lines, SheetTerms())]


def test_a_caption_beside_the_middle_of_three_lines() -> None:
    assert _texts(
        ("Vereinigte", 170, 100), ("Lieferant", 50, 110), ("Mälzereien Elbgerst", 170, 110), ("AG", 170, 120)
    ) == ["Lieferant | Vereinigte Mälzereien Elbgerst AG"]


def test_a_caption_between_two_lines() -> None:
    found = _texts(("Pale Ale", 170, 100), ("Malzsorte", 50, 105), ("Partie", 230, 105), ("Malz", 170, 110))
    assert found == ["Malzsorte | Pale Ale Malz | Partie"]


def test_an_address_below_a_name_is_no_part_of_it() -> None:
    lines = _texts(
        ("Certificate of analysis", 50, 80),
        ("Supplier", 50, 110), ("Oakfield Maltings", 170, 110),
        ("Station Road", 170, 120), ("Westing", 170, 130),
    )  # fmt: skip
    assert lines[1] == "Supplier | Oakfield Maltings"


def test_entries_above_and_below_that_stand_apart_are_others() -> None:
    lines = _texts(("Pale malt", 170, 90), ("Variety", 50, 110), ("Brindale", 170, 110), ("Wren Brewery", 170, 130))
    assert lines == ["Pale malt", "Variety | Brindale", "Wren Brewery"]


def test_two_names_one_below_the_other_are_both_whole() -> None:
    found = _texts(
        ("Pale Ale", 170, 100), ("Malt", 50, 105), ("Malt", 170, 110),
        ("Brindale", 170, 120), ("Variety", 50, 125), ("Gold", 170, 130),
    )  # fmt: skip
    assert found == ["Malt | Pale Ale Malt", "Variety | Brindale Gold"]


def test_two_captions_among_others_that_run_together_are_two() -> None:
    words: list[Word] = []
    for x, text in ((50, "Customer"), (150, "Quantity"), (193, "Packaging"), (300, "Lot")):
        words.append(Word(text, x, 100, x + 5.0 * len(text), 110, size=SIZE))
    (line,) = with_captions_apart(find_lines(Page(1, 595, 842, tuple(words), "text")), SheetTerms())
    assert [cell.text for cell in line.cells] == ["Customer", "Quantity", "Packaging", "Lot"]
    assert len(find_lines(Page(1, 595, 842, tuple(words), "text"))[0].cells) == 3


def test_the_head_of_a_column_that_two_captions_make_is_one() -> None:
    words = [Word("Quality test", 50, 100, 110, 110, size=SIZE), Word("Order", 150, 100, 175, 110, size=SIZE)]
    words += [Word("Batch", 220, 100, 245, 110, size=SIZE), Word("Result", 247.5, 100, 277.5, 110, size=SIZE)]
    (line,) = with_captions_apart(find_lines(Page(1, 595, 842, tuple(words), "text")), SheetTerms())
    assert line.cells[-1].text == "Batch Result"

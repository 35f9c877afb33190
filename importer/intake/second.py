"""The second reader: a recogniser of another construction than the main one, asked about single cells.

Two readers that are built alike lose the same decimal points, so a figure is only as good as the agreement of two
different ones. Here that is the PP-OCR recogniser as it comes in the ``rapidocr`` package, run through onnxruntime
alone: the rest of that package (and what it would import) is not used. Where either package is not installed
``available()`` is False and nothing is read.
"""

from __future__ import annotations

from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING, Any, NamedTuple

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from PIL import Image

    Floats = NDArray[np.float32]

NAME = "ppocr"
PACKAGE = "rapidocr"
LINE = 48  # height of a line in pixels that the recogniser was trained on
NARROWEST, WIDEST = 48, 1600
# The classifier of lines that stand on their head sees 48 x 192 pixels.
TURN_WIDTH = 192
# Its alphabet holds each Latin sign twice: as wide as a Chinese character, too (Unicode, Halfwidth and Fullwidth
# Forms).
HALF_WIDTH = {code: code - 0xFEE0 for code in range(0xFF01, 0xFF5F)} | {0x3000: 0x20}
# So many lines tell for a page where every one of them is as sure as this (a logarithm of two likelihoods).
FEW_LINES, SURE = 6, 2.0


class Read(NamedTuple):
    """What was read in one crop, and the mean certainty of its characters (0..1)."""

    text: str
    confidence: float


def available() -> bool:
    """Whether the second reader and what it runs on are installed."""
    return _recogniser() is not None


def can_tell_upside_down() -> bool:
    """Whether ``upside_down`` has what it needs."""
    return _classifier() is not None


def read_cells(crops: list[Image.Image]) -> list[Read]:
    """Read grey crops of one line each (dark on white); the answers come in the order of the crops."""
    loaded = _recogniser()
    if loaded is None or not crops:
        return [Read("", 0.0)] * len(crops)
    session, alphabet = loaded
    answers = []
    for crop in crops:  # several in one run take longer: all become as wide as the widest
        tensor = _tensor([_line(crop)])
        scores = session.run(None, {session.get_inputs()[0].name: tensor})[0]
        answers.append(_decode(scores[0], alphabet))
    return answers


def upside_down(lines: list[Image.Image]) -> bool | None:
    """Whether most of the given lines of text stand on their head; None where nothing can tell."""
    session = _classifier()
    if session is None or not lines:
        return None
    votes = _votes(session, lines[:FEW_LINES])
    if len(lines) > FEW_LINES and not (all(vote > SURE for vote in votes) or all(vote < -SURE for vote in votes)):
        votes += _votes(session, lines[FEW_LINES:])
    return sum(votes) > SURE  # pages mostly lie upright


def _votes(session: Any, lines: list[Image.Image]) -> list[float]:
    """For each line the logarithm of how much more likely it stands on its head than not."""
    import numpy as np

    resized = [line.resize((min(TURN_WIDTH, max(1, round(line.width * LINE / line.height))), LINE)) for line in lines]
    tensor = _tensor(resized, TURN_WIDTH)
    scores = np.maximum(np.asarray(session.run(None, {session.get_inputs()[0].name: tensor})[0]), 1e-4)
    votes: list[float] = (np.log(scores[:, 1]) - np.log(scores[:, 0])).tolist()
    return votes


@cache
def _recogniser() -> tuple[Any, list[str]] | None:
    """The recogniser's session and its alphabet; its first output stands for 'no character'."""
    session = _session("*rec*.onnx")
    if session is None:
        return None
    characters = session.get_modelmeta().custom_metadata_map.get("character", "").splitlines()
    alphabet = ["", *characters, " "]
    classes = session.get_outputs()[0].shape[-1]
    # another release may bring another model: an alphabet that does not fit would read nonsense
    return (session, alphabet) if classes == len(alphabet) else None


@cache
def _classifier() -> Any | None:
    return _session("*cls*.onnx")


def _session(pattern: str) -> Any | None:
    package = find_spec(PACKAGE)
    if package is None or not package.submodule_search_locations:
        return None
    models = sorted(Path(package.submodule_search_locations[0], "models").glob(pattern))
    if not models or find_spec("onnxruntime") is None:
        return None
    import onnxruntime

    options = onnxruntime.SessionOptions()
    options.intra_op_num_threads = 1
    options.inter_op_num_threads = 1
    options.enable_cpu_mem_arena = False  # else the memory of the widest batch is never given back
    options.log_severity_level = 3
    return onnxruntime.InferenceSession(str(models[0]), options, providers=["CPUExecutionProvider"])


def _line(crop: Image.Image) -> Image.Image:
    from PIL import Image

    width = min(WIDEST, max(1, round(crop.width * LINE / crop.height)))
    return crop.convert("L").resize((width, LINE), Image.Resampling.BICUBIC)


def _tensor(lines: list[Image.Image], width: int | None = None) -> Floats:
    """Grey lines as the models take them: three equal channels, -1..1, zero behind the end of a line."""
    import numpy as np

    width = width or max(NARROWEST, *(line.width for line in lines))
    tensor = np.zeros((len(lines), 3, LINE, width), dtype=np.float32)
    for index, line in enumerate(lines):
        grey = np.asarray(line.convert("L"), dtype=np.float32) / 127.5 - 1.0
        tensor[index, :, :, : line.width] = grey
    return tensor


def _decode(scores: Floats, alphabet: list[str]) -> Read:
    """The best character of each step, repeats and gaps taken out."""
    import numpy as np

    best = scores.argmax(axis=1)
    keep = np.ones(len(best), dtype=bool)
    keep[1:] = best[1:] != best[:-1]
    keep &= best != 0
    if not keep.any():
        return Read("", 0.0)
    certainty = float(scores[np.flatnonzero(keep), best[keep]].mean())
    text = "".join(alphabet[index] for index in best[keep]).translate(HALF_WIDTH)
    return Read(text.strip(), certainty)

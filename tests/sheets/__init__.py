"""Makes malt analysis sheets as PDF with the truth of each, for measuring how well sheets are read."""

from tests.sheets.make import kinds, make_sheet
from tests.sheets.truth import Made, Truth, TruthAnalysis, TruthFigure, TruthHeader, TruthRow

__all__ = ["Made", "Truth", "TruthAnalysis", "TruthFigure", "TruthHeader", "TruthRow", "kinds", "make_sheet"]

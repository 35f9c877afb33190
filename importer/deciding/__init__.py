"""What the figures of a batch mean: compared, held against what was agreed, and carried into a recipe.

Plain functions on the outward models. Figures of different methods are never set against each other, nothing is
concluded from a figure in review, and residues are never judged.
"""

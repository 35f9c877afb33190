"""How sure a count of errors makes us."""

from __future__ import annotations

from math import exp, lgamma, log, log1p


def binomial_at_most(errors: int, trials: int, rate: float) -> float:
    """Chance of at most ``errors`` in ``trials`` at a true error rate."""
    if rate <= 0:
        return 1.0
    if rate >= 1:
        return 1.0 if errors >= trials else 0.0
    total = 0.0
    for k in range(errors + 1):
        ways = lgamma(trials + 1) - lgamma(k + 1) - lgamma(trials - k + 1)
        total += exp(ways + k * log(rate) + (trials - k) * log1p(-rate))
    return min(total, 1.0)


def upper_bound(errors: int, trials: int, confidence: float = 0.95) -> float:
    """One-sided Clopper-Pearson upper bound: the rate at which so few errors have a chance of 1 - confidence."""
    if trials == 0 or errors >= trials:
        return 1.0
    low, high = errors / trials, 1.0
    for _ in range(60):
        middle = (low + high) / 2
        if binomial_at_most(errors, trials, middle) > 1 - confidence:
            low = middle
        else:
            high = middle
    return high

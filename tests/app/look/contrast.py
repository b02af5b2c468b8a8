"""How well two colours can be told apart."""


def contrast(one: str, two: str) -> float:
    """Contrast ratio of two colours, 1..21 (WCAG 2.x relative luminance)."""
    bright, dark = sorted((_luminance(one), _luminance(two)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    channels = [int(colour[i:i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

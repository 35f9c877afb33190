# ruff: noqa: E501
"""Sentences of letters and limits in words, kept aside with the layouts that use them."""

from __future__ import annotations

GREETINGS: dict[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "en": (
        ("Dear customer,", "thank you for your order. We loaded 2 trucks with 24.5 t each on the agreed day; the laboratory "
         "analysed 3 samples of the lot and found the following mean values."),
        ("The remaining 12.0 t will follow within 14 days. Please call extension 417 for questions.", "Yours faithfully,"),
    ),
    "de": (
        ("Sehr geehrte Damen und Herren,", "vielen Dank für Ihren Auftrag. Wir haben 2 Züge mit je 24,5 t verladen; unser "
         "Labor hat 3 Proben der Partie untersucht und folgende Mittelwerte gefunden."),
        ("Die restlichen 12,0 t folgen innerhalb von 14 Tagen. Rückfragen unter Durchwahl 417.", "Mit freundlichen Grüßen"),
    ),
    "fr": (
        ("Madame, Monsieur,", "nous vous remercions de votre commande de 24,5 t. Notre laboratoire a analysé 3 échantillons "
         "du lot ; voici les valeurs moyennes."),
        ("Les 12 tonnes restantes suivront sous 14 jours.", "Veuillez agréer nos salutations distinguées."),
    ),
    "nl": (
        ("Geachte klant,", "dank voor uw bestelling van 24,5 ton. Ons laboratorium onderzocht 3 monsters van de partij; de "
         "gemiddelden staan hieronder."),
        ("De overige 12 ton volgt binnen 14 dagen.", "Met vriendelijke groet,"),
    ),
    "es": (
        ("Estimado cliente:", "agradecemos su pedido de 24,5 toneladas. Nuestro laboratorio analizó 3 muestras de la partida "
         "con los siguientes valores medios."),
        ("Las 12 toneladas restantes se enviarán en 14 días.", "Atentamente,"),
    ),
    "it": (
        ("Gentile cliente,", "La ringraziamo per l'ordine di 24,5 tonnellate. Il laboratorio ha analizzato 3 campioni della "
         "partita; ecco i valori medi."),
        ("Le restanti 12 tonnellate seguiranno entro 14 giorni.", "Distinti saluti"),
    ),
}  # fmt: skip

LIMIT_PHRASES: dict[str, tuple[str, str, str]] = {
    "en": ("not more than {}", "not less than {}", "between {} and {}"),
    "de": ("höchstens {}", "mindestens {}", "zwischen {} und {}"),
    "fr": ("au plus {}", "au moins {}", "de {} à {}"),
    "nl": ("ten hoogste {}", "ten minste {}", "{} tot {}"),
    "es": ("no más de {}", "no menos de {}", "entre {} y {}"),
    "it": ("non oltre {}", "almeno {}", "da {} a {}"),
    "cs": ("nejvýše {}", "nejméně {}", "{} až {}"),
    "da": ("højst {}", "mindst {}", "{} til {}"),
}

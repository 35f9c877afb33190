"""Header entries of a sheet: captions with batch numbers, dates, names; all invented."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from random import Random

from tests.sheets.numbers import DateStyle
from tests.sheets.truth import Certainty, TruthHeader
from tests.sheets.wording import Wording

PER_BATCH = ("batch", "produced_on", "analysed_on", "best_before", "quantity", "variety")

SUPPLIERS = {
    "en": ("Quillbrook Maltings", "Tarnlow Malt Company", "Fenwhistle Maltings Ltd", "Orrinside Malt"),
    "de": ("Mälzerei Harzbrunn-Ost", "Malzfabrik Oberdettlau GmbH", "Mälzerei Quendelhof", "Malzwerke Irrlach"),
    "fr": ("Malterie de Vrainville-le-Sec", "Malterie des Trois Ormeaux d'Azelle", "Malteries Corvaizier"),
    "nl": ("Mouterij De Zwaalhoek", "Mouterij Oudelandsluis", "Mouterij Kwelderzicht"),
    "es": ("Maltería Valdeclara del Río", "Malterías Peñacorba", "Maltería Los Olmedillos"),
    "cs": ("Sladovna Kravolín", "Sladovna Horní Pšeničná", "Sladovny Vrbovec nad Lučkou"),
    "da": ("Ørbjærg Malteri", "Malteriet Skovlunde Enge", "Malthuset Vestermosen"),
    "it": ("Malteria Montelupara", "Malterie di Valdorza", "Malteria Campofiorito Basso"),
    "sk": ("Sladovňa Dolné Jačmenné", "Sladovne Tichá Rieka"),
    "pl": ("Słodownia Jęczmionka", "Słodownia Nowy Kłosów"),
    "pt": ("Maltaria Vale das Espigas", "Malteria Serra do Trigal"),
}
CUSTOMERS = {
    "en": ("Larkmoor Brewing", "Three Herons Brewery", "Copper Wren Brewery"),
    "de": ("Brauerei Amselgrund", "Privatbrauerei Tannhofer Höhe"),
    "fr": ("Brasserie du Vieux Lavoir", "Brasserie La Loutre Grise"),
    "nl": ("Brouwerij De Grutto", "Brouwerij Het Wilgenveer"),
    "es": ("Cervecería La Garza Parda", "Cervezas Monteolivo"),
    "cs": ("Pivovar U Dvou Čápů", "Pivovar Lužanka"),
    "da": ("Bryggeriet Vibeholm", "Lærkedal Bryghus"),
    "it": ("Birrificio del Gheppio", "Birrificio Pontelungo"),
    "sk": ("Pivovar Pri Bocianovi",),
    "pl": ("Browar Pod Czaplą",),
    "pt": ("Cervejaria da Garça",),
}
# How often an entry is printed for a batch.
OFTEN = {"produced_on": 0.45, "analysed_on": 0.6, "best_before": 0.3, "quantity": 0.45, "variety": 0.5}
VARIETIES = ("Brindale", "Tessaly", "Corvane", "Aurinka", "Peltona", "Solvane", "Merrowin", "Kestrelle")
BRANDS = ("", "", "", " Selecta", " Heritage", " Premium", " 'Lark'", " No. 1", " Export")
FOOTERS = {
    "en": ("Form QF-{n} Rev. {r}", "Page {p} of {q}", "Registered in no country, company no. 0{n}4417"),
    "de": ("Formblatt QM-{n}, Rev. {r}", "Seite {p} von {q}", "Amtsgericht Irrlach HRB 4{n}19"),
    "fr": ("Formulaire FQ-{n} rév. {r}", "Page {p} sur {q}", "RCS Vrainville 4{n} 118"),
    "nl": ("Formulier KW-{n} versie {r}", "Pagina {p} van {q}", "KvK 0{n}55120"),
    "es": ("Formulario FC-{n} rev. {r}", "Página {p} de {q}", "Registro mercantil, tomo {n}, folio 88"),
    "cs": ("Formulář F-{n} verze {r}", "Strana {p} z {q}", "IČ 0{n}45518"),
    "da": ("Skema KS-{n} udg. {r}", "Side {p} af {q}", "CVR 1{n}40077"),
    "it": ("Modulo MQ-{n} rev. {r}", "Pagina {p} di {q}", "REA 1{n}209"),
    "sk": ("Formulár F-{n} verzia {r}", "Strana {p} z {q}", "IČO 3{n}5518"),
    "pl": ("Formularz F-{n} wyd. {r}", "Strona {p} z {q}", "KRS 00{n}4417"),
    "pt": ("Formulário FQ-{n} rev. {r}", "Página {p} de {q}", "NIPC 50{n}417"),
}
ADDRESSES = {
    "en": ("Unit 7, Old Wharf Road 112", "QB4 9ZZ Quillbrook"),
    "de": ("Am Kornspeicher 14", "09999 Harzbrunn"),
    "fr": ("12, rue des Orges", "99120 Vrainville"),
    "nl": ("Kadeweg 38", "9999 ZZ Zwaalhoek"),
    "es": ("Camino de la Cebada 45", "99870 Valdeclara"),
    "cs": ("Sladovnická 221", "999 01 Kravolín"),
    "da": ("Kornvej 63", "9998 Ørbjærg"),
    "it": ("Via dell'Orzo 18", "99030 Montelupara"),
    "sk": ("Sladovnícka 17", "999 05 Jačmenné"),
    "pl": ("ul. Słodowa 29", "99-998 Kłosów"),
    "pt": ("Rua da Cevada 51", "9999-104 Trigal"),
}


# Captions of no header key: whoever takes them for one is wrong.
OTHERS = {
    "en": (
        ("Sample no.", "{n}"),
        ("Silo", "{s}"),
        ("Truck", "QB {n} TN"),
        ("Analyst", "J. Harlow"),
        ("Steeping no.", "{s}"),
    ),
    "de": (("Proben-Nr.", "{n}"), ("Silo", "{s}"), ("LKW-Kennzeichen", "QB-{n}"), ("Probenehmer", "J. Harlau")),
    "fr": (("Échantillon n°", "{n}"), ("Silo", "{s}"), ("Camion", "QB-{n}-TN"), ("Analyste", "J. Harlou")),
    "nl": (("Monsternummer", "{n}"), ("Silo", "{s}"), ("Vrachtwagen", "QB-{n}")),
    "es": (("Muestra nº", "{n}"), ("Silo", "{s}"), ("Camión", "QB {n}")),
    "cs": (("Vzorek č.", "{n}"), ("Silo", "{s}"), ("SPZ vozidla", "QB {n}")),
    "da": (("Prøvenr.", "{n}"), ("Silo", "{s}"), ("Vogn", "QB {n}")),
    "it": (("Campione n.", "{n}"), ("Silo", "{s}"), ("Targa", "QB {n}")),
    "sk": (("Vzorka č.", "{n}"), ("Silo", "{s}")),
    "pl": (("Nr próbki", "{n}"), ("Silos", "{s}")),
    "pt": (("Amostra n.º", "{n}"), ("Silo", "{s}")),
}


@dataclass(frozen=True, slots=True)
class Entry:
    """One caption with its text, and what a reading of it should give."""

    key: str
    caption: str
    text: str
    truth: TruthHeader


class HeaderMaker:
    """Draws header entries for the batches of one sheet."""

    def __init__(self, rng: Random, words: Wording, comma: bool, american: bool) -> None:
        self.rng, self.words, self.comma = rng, words, comma
        self.dates = DateStyle(rng, words.language, american)
        self.year = rng.choice((2022, 2023, 2024, 2025))
        self.number_form = rng.randint(0, 7)
        self.serial = rng.randint(100, 8999)
        self.supplier = rng.choice(SUPPLIERS[words.language])
        self.captions: dict[str, str] = {}

    def caption(self, key: str) -> str:
        if key not in self.captions:
            self.captions[key] = self.words.pick(self.rng, "captions", key)
        return self.captions[key]

    def batch_number(self) -> str:
        self.serial += self.rng.randint(1, 40)
        n, y = self.serial, self.year % 100
        return (
            f"L-{y}{n:04d}", f"{y}/{n:04d}", f"PM {y}-{n}", f"{n:07d}-A", f"CH{y}07{n:04d}", f"{y}{n:04d}-B", f"M{n}",
            f"{n:05d}",
        )[self.number_form]  # fmt: skip

    def _entry(self, key: str, text: str, value: str | None = None, certainty: Certainty = "sure") -> Entry:
        return Entry(key, self.caption(key), text, TruthHeader(text, value if value is not None else text, certainty))

    def _date(self, key: str, day: date) -> Entry:
        shown = self.dates.write(day)
        return self._entry(key, shown.text, shown.iso, shown.certainty)

    def malt_name(self, malt_class: str) -> str:
        return self.words.pick(self.rng, "malts", malt_class) + self.rng.choice(BRANDS)

    def quantity(self) -> str:
        rng = self.rng
        tonnes = f"{rng.uniform(3, 28):.{rng.choice((1, 2))}f}".replace(".", "," if self.comma else ".")
        return rng.choice((f"{tonnes} t", f"{rng.randint(4, 28)} t", f"{rng.randint(40, 280) * 100} kg"))

    def entries(self, malt_class: str, batches: int, kind: str) -> tuple[list[Entry], list[list[Entry]]]:
        """Entries that hold for the whole sheet, and those of each batch."""
        rng = self.rng
        shared = [self._entry("malt", self.malt_name(malt_class))]
        if kind == "specification":
            if rng.random() < 0.5:
                shared.append(self._entry("crop_year", str(self.year)))
            return shared, [[] for _ in range(batches)]
        if rng.random() < 0.25:
            shared.append(self._entry("supplier", self.supplier))
        if rng.random() < 0.75:
            shared.append(self._entry("crop_year", str(self.year)))
        if rng.random() < 0.4:
            shared.append(self._entry("customer", rng.choice(CUSTOMERS[self.words.language])))
        if rng.random() < 0.3:
            order = rng.choice((f"{rng.randint(10000, 99999)}", f"PO-{rng.randint(1000, 9999)}"))
            shared.append(self._entry("order", order))
        certificate = rng.random() < 0.35
        delivered = rng.random() < 0.25
        wanted = [key for key, share in OFTEN.items() if rng.random() < share]
        if certificate:
            text = rng.choice(
                (f"COA-{self.year}-{rng.randint(1, 999):04d}", f"ZA {self.year % 100}/{rng.randint(1, 999)}")
            )
            shared.append(self._entry("certificate", text))
        own = []
        start = date(self.year, 10, 3) + timedelta(days=rng.randint(0, 260))
        if delivered:
            shared.append(self._date("delivered_on", start + timedelta(days=rng.randint(20, 40))))
        one_day = rng.random() < 0.5
        for _ in range(batches):
            made = start + timedelta(days=rng.randint(0, 9))
            entries = [self._entry("batch", self.batch_number())]
            for key in wanted:
                if key == "produced_on":
                    entries.append(self._date(key, made))
                elif key == "analysed_on":
                    entries.append(self._date(key, (start if one_day else made) + timedelta(days=rng.randint(1, 5))))
                elif key == "best_before":
                    entries.append(self._date(key, made + timedelta(days=rng.choice((365, 540, 547)))))
                elif key == "quantity":
                    entries.append(self._entry(key, self.quantity()))
                else:
                    entries.append(self._entry(key, rng.choice(VARIETIES)))
            own.append(entries)
        if rng.random() < 0.25:
            caption, text = rng.choice(OTHERS[self.words.language])
            text = text.format(n=rng.randint(1000, 9899), s=rng.randint(2, 48))
            shared.append(Entry("", caption, text, TruthHeader(text, text, required=False)))
        if batches == 1 and rng.random() < 0.8:
            rng.shuffle(shared)
        if self.dates.order_shown:  # 25/03 beside 02/03 settles which is the month
            for entry in (*shared, *(e for entries in own for e in entries)):
                if entry.truth.certainty == "ambiguous":
                    entry.truth.certainty = "either"
        return shared, own

"""Czech, Danish, Polish and Swedish wordings of the sealed sheets."""

from __future__ import annotations

_CS = """
[labels]
moisture: Vlhkost | Obsah vody | Voda
extract_fine_dry: Extrakt v sušině~dry | Extrakt, jemný šrot{b} | Extrakt moučka{b} | Obsah extraktu v sušině~dry
extract_coarse_dry: Extrakt hrubý šrot{b} | Extrakt hrubý{b}
extract_fine_as_is: Extrakt v původním sladu~asis | Extrakt moučka{b}
fine_coarse_difference: Rozdíl extraktů | Rozdíl extraktů M-Š | Rozdíl moučka - šrot
colour: Barva | Barva sladiny | Barva kongresní sladiny
boiled_colour: Barva po povaření | Barva sladiny po povaření
total_nitrogen: Celkový dusík{b}
total_protein: Bílkoviny{b} | Dusíkaté látky{b} | N-látky{b} | Obsah bílkovin{b}
soluble_nitrogen: Rozpustný dusík{b}
soluble_protein: Rozpustné bílkoviny{b} | Rozpustné N-látky{b}
ratio_kolbach: Kolbachovo číslo | Kolbach | Kolbachův index
fan: FAN | Volný aminodusík | Volný aminodusík (FAN)
friability: Friabilita | Křehkost | Friabilita (křehkost)
homogeneity: Homogenita
whole_grains: Celá zrna | Celá zrna (friabilimetr)
glassy_grains: Sklovitá zrna | Sklovitost
dp: Diastatická mohutnost | Diast. mohutnost
alpha_amylase: Alfa-amyláza | α-amyláza
beta_glucan: Beta-glukany | β-glukany ve sladině | Betaglukany
viscosity: Viskozita | Viskozita sladiny
saccharification_time: Zcukření | Doba zcukření
filtration: Stékání | Doba filtrace | Doba stékání
clarity: Čirost | Čirost sladiny
odour: Vůně | Vůně rmutu
wort_ph: pH | pH sladiny
final_attenuation: Dosažitelný stupeň prokvašení | Dosažitelné prokvašení zdánlivé
relative_extract_45: Relativní extrakt 45 °C | RE 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | nad 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm | Podíl nad 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | Propad pod 2,2 mm
thousand_corn_weight: HTZ | Hmotnost 1000 zrn
hectolitre_weight: Objemová hmotnost | Hektolitrová hmotnost
ndma: NDMA | Nitrosaminy (NDMA)
[captions]
malt: Výrobek | Druh sladu | Název výrobku
batch: Šarže | Číslo šarže | Šarže č. | Partie
certificate: Certifikát č. | Atest č. | Číslo atestu
crop_year: Sklizeň | Rok sklizně
variety: Odrůda | Odrůda ječmene
produced_on: Datum výroby | Vyrobeno
analysed_on: Datum analýzy | Datum rozboru
quantity: Množství | Hmotnost netto
order: Objednávka č. | Vaše objednávka
customer: Odběratel | Zákazník
[heads]
label: Parametr | Ukazatel | Znak jakosti | Rozbor
result: Výsledek | Hodnota | Naměřená hodnota
unit: Jednotka | Jedn.
method: Metoda
min: min. | Min
max: max. | Max
spec: Požadavek | Specifikace | Norma
[titles]
batch: Atest sladu | Certifikát analýzy | Rozbor sladu | Osvědčení o jakosti sladu
[family]
EBC: Metody EBC | Stanoveno metodami EBC | Metody: Analytica EBC
[x]
silo: Silo
truck: SPZ | Vozidlo
note_no: Dodací list č. | Dodací list
article: Kód zboží
sample: Vzorek č.
packing: Balení
packing_text: volně ložený | pytle 25 kg
origin: Původ
origin_text: Severní kraj
account: Číslo zákazníka
seal: Plomba č.
sampled: Datum odběru vzorku
issued: Vystaveno | Datum vystavení
page: Strana {p}/{q}
tagline: Slady pro pivovary
auto: Vystaveno elektronicky, platí bez podpisu.
sample_only: Výsledky se týkají pouze zkoušeného vzorku.
store: Skladujte v suchu a chladu.
accredited: Zkušební laboratoř akreditovaná dle ISO/IEC 17025, č. 1{n}.
verdict: Šarže vyhovuje.
intro: Potvrzujeme, že dodaný slad má tyto hodnoty:
signed: Vedoucí laboratoře
checked: Schválil
lab: Laboratoř sladovny
remarks: Poznámky
none: bez poznámek
fn_dry: v sušině
items: Pol. ; Kód ; Název ; Množství
analysis_of: Rozbor dodaného sladu
letter_open: Vážený zákazníku,
letter_text: zasíláme hodnoty dnes naložené šarže:
letter_close: S pozdravem
mail: Od ; Komu ; Předmět ; Odesláno
weighted: Vážený průměr
minmax: Nejnižší hodnota ; Nejvyšší hodnota
standard: Cílová hodnota
barley_rows: Vlhkost ječmene ; Bílkoviny ječmene ; Klíčivá energie
"""

_DA = """
[labels]
moisture: Vand | Vandindhold | Fugtighed
extract_fine_dry: Ekstrakt, fin{b} | Ekstrakt finmaling{b} | Finekstrakt{b}
extract_coarse_dry: Ekstrakt, grov{b} | Ekstrakt grovmaling{b}
extract_fine_as_is: Ekstrakt, fin{b} | Ekstrakt finmaling{b}
fine_coarse_difference: Differens fin/grov | Fin-grov differens
colour: Farve | Urtfarve | Farve af urt
boiled_colour: Farve efter kogning | Kogefarve
total_nitrogen: Total kvælstof{b}
total_protein: Protein{b} | Totalprotein{b} | Råprotein{b}
soluble_nitrogen: Opløseligt kvælstof{b}
soluble_protein: Opløseligt protein{b}
ratio_kolbach: Kolbach indeks | Kolbachtal | Kolbach
fan: FAN | Frit aminokvælstof
friability: Friabilitet | Sprødhed
homogeneity: Homogenitet
whole_grains: Hele kerner
glassy_grains: Glasagtige kerner | Glassede kerner
dp: Diastatisk kraft | Diastatisk styrke
alpha_amylase: Alfa-amylase | α-amylase
beta_glucan: Beta-glukan | β-glukan | Betaglucan i urt
viscosity: Viskositet | Viskositet, urt
saccharification_time: Forsukring | Forsukringstid
filtration: Filtrering | Filtreringstid
clarity: Klarhed
wort_ph: pH | pH i urt
final_attenuation: Slutforgæringsgrad, tilsyneladende | Slutforgæring (tils.)
sieve_over_2_8: > 2,8 mm | Sortering > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm
[captions]
malt: Produkt | Malttype | Varebetegnelse
batch: Batch | Batchnr. | Parti | Lotnr.
produced_on: Produktionsdato | Fremstillet
analysed_on: Analysedato | Analyseret
quantity: Mængde | Nettovægt
order: Ordrenr. | Jeres ordre
customer: Kunde | Modtager
[heads]
label: Parameter | Analyse
result: Resultat | Værdi | Måleresultat
unit: Enhed
method: Metode
spec: Specifikation | Krav | Grænser
[titles]
batch: Analysecertifikat | Maltanalyse | Analysebevis
[family]
EBC: Metoder: EBC | Analyseret efter EBC
[x]
silo: Silo
truck: Vogn nr. | Reg.nr.
note_no: Følgeseddel nr.
article: Varenr.
sample: Prøvenr.
packing: Emballage
packing_text: Bulk | 25 kg sække
origin: Oprindelse
origin_text: Nordø
account: Kundenr.
seal: Plombe nr.
sampled: Prøve udtaget
issued: Udstedt | Udskrevet
page: Side {p} af {q}
tagline: Malt til bryggerier
auto: Udskrevet elektronisk, gyldigt uden underskrift.
sample_only: Resultaterne gælder kun for den prøvede prøve.
store: Opbevares tørt og køligt.
accredited: Laboratoriet er akkrediteret efter ISO/IEC 17025, nr. {n}.
verdict: Partiet overholder specifikationen.
intro: Hermed analysen af den leverede malt:
signed: Kvalitetschef
checked: Godkendt af
lab: Laboratoriet
remarks: Bemærkninger
none: ingen
fn_dry: i tørstof
items: Pos. ; Varenr. ; Betegnelse ; Mængde
analysis_of: Analyse af den leverede vare
letter_open: Kære kunde,
letter_text: hermed tallene for det parti, der er læsset i dag:
letter_close: Med venlig hilsen
mail: Fra ; Til ; Emne ; Sendt
weighted: Vægtet gennemsnit
minmax: Laveste værdi ; Højeste værdi
standard: Målværdi
"""

_PL = """
[labels]
moisture: Wilgotność | Wilgotność słodu | Zawartość wody
extract_fine_dry: Ekstraktywność{b}~either | Ekstrakt, mączka{b} | Ekstraktywność - przemiał drobny{b}
fine_coarse_difference: Różnica ekstraktów mączka/śruta | Różnica ekstraktu
colour: Barwa | Barwa brzeczki kongresowej
total_protein: Białko{b} | Białko ogólne{b}
soluble_protein: Białko rozpuszczalne{b}
ratio_kolbach: Liczba Kolbacha | Kolbach
friability: Kruchość | Kruchość (friabilimetr)
dp: Siła diastatyczna | Moc diastatyczna
viscosity: Lepkość brzeczki | Lepkość
[heads]
label: Parametr | Oznaczenie | Wskaźnik
result: Wynik | Wartość
unit: Jednostka | Jedn.
spec: Wymagania | Specyfikacja
[titles]
batch: Świadectwo jakości | Certyfikat analizy | Analiza słodu
[x]
silo: Silos
truck: Nr rej. pojazdu
note_no: WZ nr
article: Indeks
sample: Próbka nr
packing: Opakowanie
packing_text: luzem | worki 25 kg
origin: Pochodzenie
origin_text: Północ
account: Nr klienta
seal: Plomba nr
sampled: Data pobrania próbki
issued: Data wystawienia
page: Strona {p} z {q}
tagline: Słody browarnicze
auto: Dokument wygenerowany elektronicznie, ważny bez podpisu.
sample_only: Wyniki dotyczą badanej próbki.
store: Przechowywać w suchym i chłodnym miejscu.
accredited: Laboratorium akredytowane wg ISO/IEC 17025, AB 1{n}.
verdict: Partia zgodna ze specyfikacją.
intro: Potwierdzamy jakość dostarczonego słodu:
signed: Kierownik laboratorium
checked: Zatwierdził
lab: Laboratorium
remarks: Uwagi
none: brak
fn_dry: w suchej masie
items: Poz. ; Indeks ; Nazwa ; Ilość
analysis_of: Analiza dostarczonego słodu
letter_open: Szanowni Państwo,
letter_text: przesyłamy wyniki partii załadowanej dzisiaj:
letter_close: Z poważaniem
mail: Od ; Do ; Temat ; Wysłano
weighted: Średnia ważona
minmax: Najniższa wartość ; Najwyższa wartość
standard: Wartość docelowa
"""

_SV = """
[labels]
moisture: Vattenhalt | Fukthalt | Vatten
extract_fine_dry: Extrakt, finmalet{b} | Extrakt fin{b} | Extraktutbyte fin{b}
extract_coarse_dry: Extrakt, grovmalet{b} | Extrakt grov{b}
extract_fine_as_is: Extrakt, finmalet{b} | Extrakt fin{b}
fine_coarse_difference: Extraktskillnad fin-grov | Differens fin/grov
colour: Färg | Vörtfärg
boiled_colour: Färg efter kokning | Kokfärg
total_nitrogen: Totalkväve{b}
total_protein: Protein{b} | Totalprotein{b} | Råprotein{b}
soluble_nitrogen: Lösligt kväve{b}
soluble_protein: Lösligt protein{b}
ratio_kolbach: Kolbachtal | Kolbachindex
fan: FAN | Fritt aminokväve (FAN)
friability: Friabilitet | Friabilimetervärde
homogeneity: Homogenitet
whole_grains: Hela korn
glassy_grains: Glasiga korn
dp: Diastatisk kraft
alpha_amylase: Alfa-amylas | α-amylas
beta_glucan: Beta-glukan | β-glukan i vört
viscosity: Viskositet | Vörtens viskositet
saccharification_time: Försockringstid
wort_ph: pH | Vört-pH
final_attenuation: Slutförjäsningsgrad, skenbar
sieve_over_2_8: > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm
thousand_corn_weight: Tusenkornvikt
hectolitre_weight: Hektolitervikt
ndma: NDMA
deoxynivalenol: DON | Deoxynivalenol (DON)
[captions]
supplier: Leverantör | Mälteri
malt: Produkt | Maltsort
batch: Batch | Batchnr | Parti | Lotnummer
certificate: Certifikat nr | Analysnr
crop_year: Skörd | Skördeår
variety: Kornsort | Sort
produced_on: Produktionsdatum | Tillverkningsdatum
analysed_on: Analysdatum
delivered_on: Leveransdatum
best_before: Bäst före | Bäst före-datum
quantity: Mängd | Nettovikt
order: Ordernr | Er order
customer: Kund | Mottagare
[heads]
label: Parameter | Analys | Egenskap
result: Resultat | Värde
unit: Enhet
method: Metod
min: Min. | Lägst
max: Max. | Högst
spec: Specifikation | Krav
typical: Typiskt värde
previous: Föregående parti
number: Nr
remark: Anmärkning
[titles]
batch: Analyscertifikat | Maltanalys | Analysintyg
specification: Produktblad
[sections]
physical: Fysikalisk analys
chemical: Kemisk analys
wort: Vört
enzymes: Enzymer
nitrogen: Protein
modification: Upplösning
contaminants: Främmande ämnen
sieving: Sortering
[basis]
dry: i torrsubstans | (TS) | , torrsubstans
asis: i leveranstillstånd | (som levererat)
[unitbasis]
dry: % TS | % i TS
asis: % som levererat
[notes]
dry: Extrakt och protein anges i torrsubstans.
[family]
EBC: Analysmetoder: EBC | Analyserad enligt Analytica-EBC
[words]
nd: ej påvisat
[malts]
PIL: Pilsnermalt
XP: Extra ljus pilsnermalt
ALE: Pale ale-malt
VIE: Wienermalt
MUN: Münchnermalt
CRY: Karamellmalt
ROA: Chokladmalt
WHE: Vetemalt
RYE: Rågmalt
OAT: Havremalt
DIS: Whiskymalt
[x]
silo: Silo
truck: Bil
note_no: Följesedel nr
article: Artikelnr
sample: Provnr
packing: Förpackning
packing_text: Bulk | 25 kg säck
origin: Ursprung
origin_text: Norrslätt
account: Kundnr
seal: Plombnr
sampled: Provtagning
issued: Utfärdat
page: Sida {p} av {q}
tagline: Malt för bryggerier
auto: Utskrivet elektroniskt, giltigt utan underskrift.
sample_only: Resultaten gäller endast provet.
store: Förvaras torrt och svalt.
accredited: Laboratoriet är ackrediterat enligt ISO/IEC 17025, nr {n}.
verdict: Partiet uppfyller specifikationen.
intro: Härmed intygas analysen av levererad malt:
signed: Kvalitetschef
checked: Godkänd av
lab: Laboratoriet
remarks: Anmärkningar
none: inga
fn_dry: i torrsubstans
items: Pos. ; Artikelnr ; Benämning ; Mängd
analysis_of: Analys av levererad vara
letter_open: Hej,
letter_text: här är värdena för partiet som lastades i dag:
letter_close: Med vänlig hälsning
mail: Från ; Till ; Ämne ; Skickat
weighted: Viktat medelvärde
minmax: Lägsta värde ; Högsta värde
standard: Målvärde
"""

TEXTS = {"cs": _CS, "da": _DA, "pl": _PL, "sv": _SV}

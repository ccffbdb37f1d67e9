"""Sheets of an invented farm over many years: three crops a year on every bed, each with its harvests and its flip, and daily weather."""
import csv, datetime as dt, math, random, sys

years, beds, folder = int(sys.argv[1]), int(sys.argv[2]), sys.argv[3]
last = 2025
chance = random.Random(7)
COLUMNS = ["date", "did", "beds", "field", "gross", "length", "width", "none-since", "evidence", "crop", "origin", "plants",
           "source", "depth", "how", "tool", "quantity", "lot", "lots", "as", "invoice", "implement", "passes", "material",
           "manure", "leaves", "stalks", "people", "minutes", "tarp-folded-back", "organic-carbon", "carbon-method",
           "bulk-density", "clay", "ph", "from-depth", "to-depth"]
CROPS = [("lettuce", 70, 0.9, 60), ("bush bean", 160, 0.35, 150), ("kale", 245, 0.8, 240)]


def write(name, rows):
    with open(f"{folder}/{name}", "w", newline="") as out:
        sheet = csv.DictWriter(out, COLUMNS)
        sheet.writeheader()
        sheet.writerows(rows)


first = last - years + 1
write("beds.csv", [
    {"date": f"{first}-01-02", "did": "register-field", "field": "Long", "gross": "1ha"},
    {"date": f"{first}-01-02", "did": "lay-out", "field": "Long", "beds": f"L1..L{beds}", "length": "30m", "width": "0.75m"},
    {"date": f"{first}-01-02", "did": "declare-land", "field": "Long", "none-since": "1990-01-01", "evidence": "own records"},
])

for year in range(first, last + 1):
    rows = []

    def did(bed, ordinal, word, **said):
        day = dt.date(year, 1, 1) + dt.timedelta(days=ordinal)
        rows.append({"date": day.isoformat(), "did": word, "beds": f"L{bed}",
                     **{key.replace("_", "-"): value for key, value in said.items()}})

    for bed in range(1, beds + 1):
        if (year - first) % 5 == 0:
            did(bed, 40, "sample-soil", organic_carbon=f"{1.6 + chance.random() * 0.6:.2f}%", carbon_method="combustion",
                bulk_density="1.28g/cm3", from_depth="0cm", clay="18%", ph="6.7", to_depth="20cm")
        for at, (crop, planted, kilos, _) in enumerate(CROPS):
            start = planted + bed % 10
            did(bed, start, "transplant", crop=crop, origin="own", plants=str(200))
            for k in range(4):
                did(bed, start + 4 + 9 * k, "irrigate", source="well", depth="12mm", how="drip")
            for k in range(3):
                did(bed, start + 10 + 10 * k, "weed", tool="hoe", people="2", minutes="20")
            for k in range(5):
                said = {"crop": crop, "quantity": f"{kilos * (4 + 3 * chance.random()):.1f}kg", "lot": f"{crop[:3].upper()}-{bed}-{k}"}
                did(bed, start + 42 + 4 * k, "harvest", **said)
            did(bed, start + 60, "finish", crop=crop)
            did(bed, start + 61, "flail", passes="2", people="1", minutes="15")
            did(bed, start + 61, "harrow", passes="1")
            did(bed, start + 62, "tarp", material="silage film", people="2", minutes="10")
            did(bed, start + 70, "check-tarp", leaves="soft", stalks="whole")
            did(bed, start + 78, "check-tarp", leaves="gone", stalks="soft")
            did(bed, start + 82, "untarp")
            did(bed, start + 83, "shape", implement="bed shaper")
            did(bed, start + 83, "broadfork")
    write(f"year-{year}.csv", rows)

with open(f"{folder}/weather.csv", "w", newline="") as out:
    sheet = csv.writer(out)
    sheet.writerow(["date", "min_c", "max_c", "rain_mm"])
    day = dt.date(first, 1, 1)
    while day.year <= last:
        mean = 11 - 11 * math.cos(2 * math.pi * (day.timetuple().tm_yday - 20) / 365) + chance.gauss(0, 3)
        sheet.writerow([day, f"{mean - 5:.1f}", f"{mean + 6:.1f}", f"{max(0, chance.gauss(-1, 6)):.1f}"])
        day += dt.timedelta(days=1)

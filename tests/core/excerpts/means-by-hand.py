"""Monthly means of oslo-2001-2002.csv by a route of its own: python, the two equations, no code of the project.

python3 means-by-hand.py > oslo-2001-2002-means.csv
Saturation pressure: ISO 13788:2012 E.7 (readings) and E.7 or E.8 (means), from memory.
"""

import csv
import math
import os
import statistics


def over_water(t):
    return 610.5 * math.exp(17.269 * t / (237.3 + t))


def over_ice(t):
    return 610.5 * math.exp(21.875 * t / (265.5 + t))


here = os.path.dirname(os.path.abspath(__file__))
months = {number: [] for number in range(1, 13)}
with open(os.path.join(here, "oslo-2001-2002.csv"), encoding="utf-8") as file:
    for row in csv.DictReader(file):
        t, rh = float(row["temperature_C"]), float(row["relative_humidity_pct"])
        months[int(row["date"].split("-")[1])].append((t, rh / 100 * over_water(t)))

print("month,readings,temperature_C,vapour_pressure_Pa,relative_humidity_pct")
for number, readings in months.items():
    t = statistics.fmean(reading[0] for reading in readings)
    p = statistics.fmean(reading[1] for reading in readings)
    saturation = over_water(t) if t >= 0 else over_ice(t)
    print(f"{number},{len(readings)},{t:.4f},{p:.3f},{100 * p / saturation:.3f}")

"""Batches at a running service, whose address is the argument. Prints what was seen."""

import json
import sys
import time

from calibration_client import CalibrationClient, quantity

api = CalibrationClient(sys.argv[1])
seen = {}


def question(kilograms):
    return {
        "scale": {"division": quantity(0.02, "kg")},
        "valueInForce": quantity(0.36, "kg/rev"),
        "catches": [{"net": quantity(kilograms, "kg"), "revolutions": quantity(40, "rev")}],
    }


# More than all buffers on the way hold.
lines = list(api.evaluate_catch_test_batch([question(14.5 + number / 10_000) for number in range(3_000)]))
seen["list"] = [len(lines), all("result" in line and line["line"] == number for number, line in enumerate(lines, 1))]

answered = []


def waiting():
    for number in range(1, 6):
        yield question(14.5)
        while len(answered) < number:
            time.sleep(0.002)


for line in api.evaluate_catch_test_batch(waiting()):
    answered.append(line["line"])
seen["made"] = answered
seen["refused"] = ["result" in line for line in api.evaluate_catch_test_batch([question(14.5), question(-1), question(15.2)])]
print(json.dumps(seen, separators=(",", ":")))

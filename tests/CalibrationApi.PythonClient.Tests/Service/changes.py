"""Changes of a running service, whose address is the argument. Prints what was seen."""

import json
import sys
import threading
import time

from calibration_client import ApiProblem, CalibrationClient

(address,) = sys.argv[1:]
api = CalibrationClient(address)
seen = {}

every = []
page = api.list_changes(limit=50)
every.extend(page["items"])
while "next" in page:
    page = api.list_changes(limit=50, after=page["after"])
    every.extend(page["items"])
in_order = [change["sequence"] for change in every] == list(range(1, len(every) + 1))
seen["listed"] = [len(every) > 50, in_order, every[0]["what"]]

stored = []


def write():
    for i in range(3):
        time.sleep(0.1)
        stored.append(api.create_product({"name": f"product {i}"}).record["id"])


# Somebody stores while we wait.
writing = threading.Thread(target=write)
writing.start()
changes = api.follow_changes(after=page["after"], kind="product")
first = []
for change in changes:
    first.append(change["id"])
    if len(first) == 2:
        break
writing.join()

# As another program would that was given the cursor.
with CalibrationClient(address) as other:
    rest = next(iter(other.follow_changes(after=changes.after)))["id"]
seen["followed"] = [first == stored[:2], rest == stored[2]]
try:
    api.list_changes(after="made-up")
except ApiProblem as problem:
    seen["refused"] = f"{problem.status} {problem.code}"
print(json.dumps(seen, separators=(",", ":")))

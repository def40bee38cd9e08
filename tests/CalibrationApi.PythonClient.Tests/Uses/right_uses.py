"""Uses of the client that a type checker has to accept."""

from collections.abc import Iterator

from calibration_client import CalibrationClient, Described, Retries, Stored, quantity
from calibration_client.schema import CatchTestRequest, HistoryItem, KeyAnswer, MassQuantity, ScaleAnswer, ScaleRequest

api = CalibrationClient("http://localhost:5000", retries=Retries(attempts=2), timeout=10)

spoken: MassQuantity = quantity(12.5, "lb")
written: MassQuantity = {"value": 12.5, "unit": "lb"}
question: CatchTestRequest = {
    "scale": {"division": {"value": 0.02, "unit": "kg"}},
    "catches": [{"net": spoken, "revolutions": quantity(40, "rev")}, {"net": written, "turns": {"value": 20, "unit": "rev"}}],
}
mass: float = api.evaluate_catch_test(question, units="us")["massPerRevolution"]["value"]

platform: ScaleRequest = {"name": "platform", "division": quantity(20, "g")}
created: Described[ScaleAnswer, ScaleRequest] = api.create_scale(platform, idempotency_key="a key")
body: ScaleRequest = {**created.editable, "retired": True}
api.replace_scale(created.record["id"], body, if_match=created.etag)
unchanged: Described[ScaleAnswer, ScaleRequest] | None = api.get_scale(created.record["id"], if_none_match=created.etag)
read: Described[ScaleAnswer, ScaleRequest] = api.get_scale(created.record["id"])
note: str | None = api.get_plan("id", units="metric").editable.get("note")

items: list[HistoryItem] = api.list_history(verdict="adopt", limit=50, from_="2026-04-01T00:00:00Z").all()
changes = api.follow_changes(kind="catch-test", machine="id", limit=10)
for change in changes:
    numbered: int = change["sequence"]
    kept: str | None = changes.after
    print(numbered, kept, change.get("occurredAt"), api.list_changes(after=kept, wait="20s")["after"])
for item in api.list_history():
    print(item["occurredAt"], mass, unchanged, read, note, items)


def questions() -> Iterator[CatchTestRequest]:
    yield question


for line in api.evaluate_catch_test_batch(questions()):
    print(line["line"], line["problem"]["detail"] if "problem" in line else line["result"]["verdict"] if "result" in line else "")
csv: str = api.request("GET", "/v1/history", headers={"Accept": "text/csv"}).text

with CalibrationClient("http://localhost:5000", key="calk_invented") as keyed:
    made = keyed.create_key({"name": "yard tablet", "scopes": ["calculate", "read"]})
    text: str | None = made.record.get("key")
    ended: Stored[KeyAnswer] = keyed.revoke_key(made.record["id"], {"reason": "Lost."})
    workspace = keyed.create_workspace({"name": "Ottermere farm"})
    keyed.replace_workspace(workspace.record["id"], {**workspace.editable, "retired": True}, if_match=workspace.etag)

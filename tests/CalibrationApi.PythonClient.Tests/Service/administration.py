"""Workspaces, keys and audit of a running service, whose address and key are the arguments. Prints what was seen."""

import datetime
import json
import sys

from calibration_client import ApiProblem, CalibrationClient, VersionConflict, new_id

address, key = sys.argv[1:]
api = CalibrationClient(address, key=key)
seen = {}


def code_of(ask):
    try:
        ask()
        return "no problem"
    except ApiProblem as problem:
        return f"{problem.status} {problem.code}"


id = new_id()
request = {"id": id, "name": "yard tablet", "scopes": ["calculate", "read"]}
made = api.create_key(request)
again = api.create_key(request)
seen["made"] = [made.record["key"].startswith(made.record["start"]), made.replayed, "key" not in again.record, again.replayed]

tablet = CalibrationClient(address, key=made.record["key"])
none = code_of(lambda: tablet.create_workspace({"name": "none"}))
seen["may"] = [len(tablet.list_machines().all()) > 0, none, code_of(lambda: tablet.list_keys().all())]
seen["none"] = code_of(lambda: CalibrationClient(address).list_machines().all())

read = api.get_key(id)
seen["read"] = [read.record["state"], api.get_key(id, if_none_match=read.etag) is None]
until = datetime.datetime.now(datetime.timezone.utc) + datetime.timedelta(minutes=1)
successor = api.rotate_key(id, {"until": until.isoformat()}).record
seen["rotated"] = [successor["replaces"] == id, successor["key"].startswith(successor["start"])]
ended = api.revoke_key(id, {"reason": "The tablet was lost."}).record
seen["revoked"] = [ended["state"], ended["revokedBecause"], code_of(lambda: tablet.list_machines().all())]
seen["keys"] = [[one["name"] for one in page] for page in api.list_keys(limit=1).pages()]

workspace = api.create_workspace({"name": "Ottermere farm"})
first = api.create_key_of_workspace(workspace.record["id"], {"name": "first administrator", "scopes": ["admin", "read"]}).record
inside = CalibrationClient(address, key=first["key"])
seen["inside"] = [inside.list_machines().all(), [one["action"] for one in inside.list_audit()]]
renamed = api.replace_workspace(workspace.record["id"], {**workspace.editable, "retired": True}, if_match=workspace.etag)
try:
    late = api.replace_workspace(workspace.record["id"], workspace.editable, if_match=workspace.etag)
except VersionConflict as conflict:
    late = conflict
known = [len(api.list_workspaces().all()), len(api.list_workspaces(include_retired=True, limit=1).all())]
seen["workspaces"] = [renamed.record["revision"], isinstance(late, VersionConflict), *known]

seen["audit"] = [one["target"] == f"/v1/keys/{id}" for one in api.list_audit(order="oldest-first", limit=2, action="revokeKey")]
# Counted by day, so one code can come twice around midnight.
seen["refusals"] = sorted({one["code"] for one in api.list_refusals(limit=1)})
seen["withoutKey"] = sorted({one["code"] for one in api.list_refusals_without_key(limit=1)})
seen["table"] = api.request("GET", "/v1/keys", query={"limit": 1}, headers={"Accept": "text/csv"}).text.splitlines()[0].startswith("id,")
print(json.dumps(seen, separators=(",", ":")))

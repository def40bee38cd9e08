import inspect
import json
import os
import re
import unittest
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

from calibration_client import CalibrationClient
from stub import against, raw

CONTRACT = json.loads(Path(os.environ["CALIBRATION_CONTRACT"]).read_text("utf-8"))
ID = "019a0000-0000-7000-8000-000000000000"
SPECIAL = {"id": ID, "questions": [{}], "body": {}, "limit": 7, "include_retired": True}


def snake(name):
    return re.sub("([A-Z])", r"_\1", name).lower()


def resolved(one):
    return CONTRACT["components"]["parameters"][one["$ref"].rsplit("/", 1)[-1]] if "$ref" in one else one


OPERATIONS = [
    (operation["operationId"], path, method.upper(), [resolved(one) for one in operation.get("parameters", [])], operation)
    for path, item in CONTRACT["paths"].items()
    for method, operation in item.items()
    if method in ("get", "put", "post", "delete", "patch")
]


class Methods(unittest.TestCase):
    def test_every_operation_has_its_method_and_every_method_its_operation(self):
        names = {snake(name) for name, *_ in OPERATIONS}
        methods = {name for name, _ in inspect.getmembers(CalibrationClient, inspect.isfunction) if not name.startswith("_")}

        self.assertGreater(len(names), 60)
        self.assertEqual(names, methods - {"close", "request", "follow_changes"})

    def test_every_method_sends_what_its_operation_takes(self):
        for name, path, verb, parameters, operation in OPERATIONS:
            with self.subTest(name):
                is_batch = path.endswith("/batch")
                answer = raw(200, b'{"line":1,"result":{}}\n' if is_batch else b'{"id":"1","items":[]}', {"ETag": '"r1"'})
                with against(answer) as (api, asked):
                    method = getattr(api, snake(name))
                    given = {}
                    for parameter in inspect.signature(method).parameters:
                        given[parameter] = SPECIAL.get(parameter, "told")
                    answered = method(**given)
                    if is_batch or "Pages" in type(answered).__name__:
                        list(answered)

                    sent = asked[0]
                    self.assertEqual((verb, path.replace("{id}", ID)), (sent.method, urlsplit(sent.target).path))
                    query = {one["name"] for one in parameters if one["in"] == "query"} - {"cursor"}
                    self.assertEqual(query, set(parse_qs(urlsplit(sent.target).query)))
                    for header in ("Idempotency-Key", "If-Match", "If-None-Match"):
                        self.assertEqual("told" if any(one["name"] == header for one in parameters) else None, sent.headers[header])
                    self.assertEqual("requestBody" in operation, len(sent.body) > 0)
                    self.assertTrue(" ".join(method.__doc__.split()).startswith(operation["summary"]))

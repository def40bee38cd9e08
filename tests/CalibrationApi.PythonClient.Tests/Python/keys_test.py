import traceback
import unittest
from urllib.parse import urlsplit

from calibration_client import ApiProblem, CalibrationClient, Retries
from calibration_client.transport import key_shower
from stub import Stub, against, cut, json_answer, problem, raw

KEY = "calk_invented"
UNITS = json_answer(200, {"units": []})
LINES = raw(200, b'{"line":1,"result":{}}\n', {"Content-Type": "application/x-ndjson"})


def shown(asked):
    return [one.headers["Authorization"] for one in asked]


def led_to(address, status=307):
    return raw(status, b"", {"Location": address})


class Keys(unittest.TestCase):
    def test_every_sort_of_request_shows_the_key(self):
        with against(UNITS, UNITS, json_answer(201, {"id": "1"}, {"ETag": '"r1"'}), LINES, LINES, key=KEY) as (api, asked):
            api.list_units()
            api.request("GET", "/v1/units")
            api.create_scale({"name": "platform", "division": {"value": 20, "unit": "g"}})
            self.assertEqual(1, len(list(api.evaluate_catch_test_batch([{}]))))
            self.assertEqual(1, len(list(api.evaluate_catch_test_batch({} for _ in range(1)))))

            self.assertEqual([f"Bearer {KEY}"] * 5, shown(asked))

    def test_a_request_that_is_sent_again_shows_it_each_time(self):
        with against(cut, json_answer(503, problem(503, "busy"), {"Retry-After": "0"}), UNITS, key=KEY) as (api, asked):
            api.list_units()

            self.assertEqual([f"Bearer {KEY}"] * 3, shown(asked))

    def test_without_a_key_nothing_is_shown(self):
        with against(UNITS) as (api, asked):
            api.list_units()

            self.assertEqual([None], shown(asked))

    def test_an_authorization_of_the_callers_own_is_kept(self):
        with against(UNITS, key=KEY, headers={"authorization": "Basic b3duOm93bg=="}) as (api, asked):
            api.list_units()

            self.assertEqual(["Basic b3duOm93bg=="], shown(asked))

    def test_the_next_page_is_asked_for_at_the_callers_own_address_wherever_its_link_leads(self):
        with Stub(json_answer(200, {"items": [2]})) as elsewhere:
            first = json_answer(200, {"items": [1], "next": f"{elsewhere.address}/v1/keys?cursor=a"})
            with against(first, json_answer(200, {"items": [2]}), key=KEY) as (api, asked):
                self.assertEqual([1, 2], api.list_keys(limit=1).all())

                self.assertEqual(["/v1/keys?limit=1", "/v1/keys?limit=1&cursor=a"], [one.target for one in asked])
                self.assertEqual([], elsewhere.asked)

    def test_a_request_that_is_led_to_another_origin_arrives_without_key_and_headers_of_the_caller(self):
        with Stub(UNITS) as elsewhere, against(led_to(f"{elsewhere.address}/v1/units"), key=KEY, headers={"X-Own": "told"}) as (api, asked):
            self.assertEqual([], api.list_units()["units"])

            self.assertEqual(([f"Bearer {KEY}"], "told"), (shown(asked), asked[0].headers["X-Own"]))
            self.assertEqual(([None], None), (shown(elsewhere.asked), elsewhere.asked[0].headers["X-Own"]))

    def test_a_request_that_is_led_to_another_path_of_the_service_shows_the_key(self):
        with against(led_to("/v1/units?units=metric"), UNITS, key=KEY) as (api, asked):
            api.list_units()

            self.assertEqual(["/v1/units", "/v1/units?units=metric"], [one.target for one in asked])
            self.assertEqual([f"Bearer {KEY}"] * 2, shown(asked))

    def test_what_stores_is_led_on_whole_or_not_at_all(self):
        scale = {"name": "platform", "division": {"value": 20, "unit": "g"}}
        with against(led_to("/v1/scales/", 308), json_answer(201, {"id": "1"}, {"ETag": '"r1"'})) as (api, asked):
            api.create_scale(scale)

            self.assertEqual(["POST", "POST"], [one.method for one in asked])
            self.assertEqual(asked[0].body, asked[1].body)
        with against(led_to("https://service.invalid/v1/scales", 302)) as (api, asked), self.assertRaises(ApiProblem) as raised:
            api.create_scale(scale)
        self.assertEqual((302, 1), (raised.exception.status, len(asked)))
        self.assertIn("https://service.invalid/v1/scales", str(raised.exception))

    def test_a_circle_of_redirections_ends(self):
        with against(led_to("/v1/units"), retries=Retries(attempts=1)) as (api, asked), self.assertRaises(ApiProblem):
            api.list_units()

        self.assertEqual(6, len(asked))

    def test_the_key_belongs_to_the_address_of_the_service_only(self):
        for service, address, is_shown in [
            ("HTTPS://Service.Invalid:443/calibration", "https://service.invalid/calibration/v1/units", True),
            ("https://service.invalid", "https://service.invalid/v1/units", True),
            ("https://service.invalid", "https://other.invalid/v1/units", False),
            ("https://service.invalid", "http://service.invalid/v1/units", False),
            ("https://service.invalid", "https://service.invalid:8443/v1/units", False),
            ("https://service.invalid", "https://service.invalid.other.invalid/v1/units", False),
            ("https://service.invalid", "https://service.invalid@other.invalid/v1/units", False),
            ("https://service.invalid/calibration", "https://service.invalid/calibration-of-others/v1/units", False),
            ("https://service.invalid/calibration", "https://service.invalid/calibration/../v1/units", False),
        ]:
            with self.subTest(service=service, address=address):
                headers = {}
                key_shower(urlsplit(service), KEY)(urlsplit(address), headers)
                self.assertEqual({"Authorization": f"Bearer {KEY}"} if is_shown else {}, headers)

    def test_what_is_no_key_is_refused_and_not_repeated(self):
        for text in ("", " ", f"{KEY}\n", f"Bearer {KEY}", f"{KEY}é"):
            with self.subTest(text):
                try:
                    CalibrationClient("http://localhost:5000", key=text)
                    self.fail("It was taken.")
                except ValueError as refusal:
                    self.assertNotIn(KEY, "".join(traceback.format_exception_only(refusal)))

    def test_what_is_no_address_is_refused(self):
        for address in ("localhost:5000", "ftp://localhost", "http://", "http://name@localhost"):
            with self.subTest(address), self.assertRaises(ValueError):
                CalibrationClient(address)

    def test_a_client_that_is_printed_does_not_show_its_key(self):
        with CalibrationClient("http://localhost:5000", key=KEY) as api:
            self.assertNotIn(KEY, f"{api!r} {vars(api)} {vars(api._transport)}")

    def test_refused_access_is_a_problem_with_its_code_tried_once_and_without_the_key(self):
        for status, code in ((401, "key-revoked"), (403, "scope-missing")):
            refusal = json_answer(status, problem(status, code))
            with self.subTest(status), against(refusal, key=KEY) as (api, asked), self.assertRaises(ApiProblem) as raised:
                api.list_keys().all()

            self.assertEqual((status, code, 1), (raised.exception.status, raised.exception.code, len(asked)))
            self.assertNotIn(KEY, f"{raised.exception!r} {vars(raised.exception)}")

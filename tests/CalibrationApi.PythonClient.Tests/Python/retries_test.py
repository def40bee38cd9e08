import email.utils
import selectors
import socket
import unittest

from calibration_client import ApiProblem, CalibrationClient, NoAnswer, Retries, VersionConflict
from calibration_client.duplex import wait_for
from stub import QUICK, against, cut, json_answer, problem, raw

SCALE = {"name": "platform", "division": {"value": 20, "unit": "g"}}
QUESTION = {"scale": {"division": {"value": 20, "unit": "g"}}, "catches": []}
STORED = json_answer(201, {"id": "1", "revision": 1, "createdAt": "a", "updatedAt": "b", **SCALE}, {"ETag": '"r1"'})
UNITS = json_answer(200, {"units": []})
UUID7 = r'^"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"$'


def busy(status, pause="0"):
    return json_answer(status, problem(status, "busy"), {"Retry-After": pause})


class Retrying(unittest.TestCase):
    def test_a_busy_service_is_asked_again_and_a_storing_request_keeps_its_key(self):
        for status in (429, 503):
            with self.subTest(status), against(busy(status), busy(status), STORED) as (api, asked):
                made = api.create_scale(SCALE)

                self.assertEqual(("1", '"r1"', False), (made.record["id"], made.etag, made.replayed))
                keys = [one.headers["Idempotency-Key"] for one in asked]
                self.assertEqual(3, len(keys))
                self.assertRegex(keys[0], UUID7)
                self.assertEqual(1, len(set(keys)))
                self.assertEqual(1, len({one.body for one in asked}))

    def test_two_requests_have_two_keys_and_a_key_of_the_callers_own_is_kept(self):
        with against(STORED) as (api, asked):
            api.create_scale(SCALE)
            api.create_scale(SCALE)
            api.create_scale(SCALE, idempotency_key="mine")
            api.request("POST", "/v1/scales", body=b"{}", headers={"Content-Type": "application/json"})

            keys = [one.headers["Idempotency-Key"] for one in asked]
            self.assertEqual("mine", keys[2])
            self.assertEqual(4, len(set(keys) - {None}))

    def test_a_calculation_stores_nothing_and_has_no_key(self):
        with against(json_answer(200, {"verdict": "keep"})) as (api, asked):
            self.assertEqual("keep", api.evaluate_catch_test(QUESTION)["verdict"])

            self.assertNotIn("Idempotency-Key", asked[0].headers)

    def test_the_attempts_have_an_end(self):
        with against(busy(503), retries=Retries(attempts=3)) as (api, asked), self.assertRaises(ApiProblem) as raised:
            api.list_units()

        self.assertEqual((503, 0, 3), (raised.exception.status, raised.exception.retry_after, len(asked)))

    def test_a_longer_wait_than_allowed_is_told_and_not_waited_for(self):
        with against(busy(429, "3600")) as (api, asked), self.assertRaises(ApiProblem) as raised:
            api.list_units()

        self.assertEqual((3600, 1), (raised.exception.retry_after, len(asked)))
        self.assertIn("3600 s", str(raised.exception))

    def test_retry_after_may_be_a_date(self):
        with against(busy(429, email.utils.formatdate(0, usegmt=True)), UNITS) as (api, asked):
            self.assertEqual([], api.list_units()["units"])

            self.assertEqual(2, len(asked))

    def test_an_answer_that_was_lost_is_asked_for_again_with_the_same_key(self):
        with against(cut, STORED) as (api, asked):
            self.assertEqual("1", api.create_scale(SCALE).record["id"])

            self.assertEqual(asked[0].headers["Idempotency-Key"], asked[1].headers["Idempotency-Key"])

    def test_an_answer_that_broke_off_is_asked_for_again(self):
        def half(handler):
            handler.send_response(200)
            handler.send_header("Content-Length", "100")
            handler.end_headers()
            handler.wfile.write(b'{"units"')
            cut(handler)

        with against(half, UNITS) as (api, asked):
            self.assertEqual([], api.list_units()["units"])

            self.assertEqual(2, len(asked))

    def test_an_attempt_that_meets_the_first_one_still_at_work_waits_for_its_answer(self):
        with against(busy(409), STORED) as (api, asked):
            api.create_scale(SCALE)

            self.assertEqual(2, len(asked))

    def test_a_replacement_whose_answer_was_lost_is_not_repeated_because_it_may_have_been_made(self):
        with against(cut, STORED) as (api, asked), self.assertRaises(NoAnswer) as raised:
            api.replace_scale("1", SCALE, if_match='"r1"')

        self.assertTrue(raised.exception.perhaps_done)
        self.assertEqual(['"r1"'], [one.headers["If-Match"] for one in asked])

    def test_a_service_that_cannot_be_reached_is_named(self):
        with socket.create_server(("127.0.0.1", 0)) as free:
            address = f"http://127.0.0.1:{free.getsockname()[1]}"

        with self.assertRaises(NoAnswer) as raised:
            CalibrationClient(address, retries=QUICK).list_units()

        self.assertIn(address, str(raised.exception))
        self.assertFalse(raised.exception.perhaps_done)

    def test_a_service_that_says_nothing_is_not_waited_for_for_ever(self):
        once = Retries(attempts=1)
        with against(lambda handler: handler.rfile.read(1), timeout=2, retries=once) as (api, asked), self.assertRaises(NoAnswer):
            api.list_units()

        self.assertEqual(1, len(asked))

    def test_a_connection_is_used_again_and_one_that_was_closed_is_not(self):
        def last(handler):
            UNITS(handler)
            handler.close_connection = True

        with against(UNITS, last, UNITS, retries=Retries(attempts=1)) as (api, asked):
            api.list_units()
            api.list_units()
            kept = api._transport._idle[0].sock
            self.assertTrue(wait_for(kept, selectors.EVENT_READ, 10), "The end of the connection never arrived.")
            api.list_units()

            first, second, third = (one.connection for one in asked)
            self.assertEqual(first, second)
            self.assertNotEqual(second, third)


class Problems(unittest.TestCase):
    def test_other_statuses_are_problems_at_once(self):
        for status in (400, 404, 409, 412, 422, 500):
            refusal = json_answer(status, problem(status, "code-of-it"))
            with self.subTest(status), against(refusal) as (api, asked), self.assertRaises(ApiProblem) as raised:
                api.get_scale("1")

            found = raised.exception
            self.assertEqual(1, len(asked))
            self.assertEqual((status, "code-of-it", None, "trace"), (found.status, found.code, found.pointer, found.trace_id))
            self.assertEqual("It cannot be done.", found.sentence)
            self.assertEqual(status == 412, isinstance(found, VersionConflict))

    def test_every_error_is_in_the_message_with_its_place(self):
        body = problem(422, "too-few", "Two errors.")
        body["errors"] = [
            {"code": "too-few", "pointer": "#/catches", "detail": "Add a catch."},
            {"code": "word-unknown", "parameter": "units", "detail": "Choose one."},
        ]
        with against(json_answer(422, body)) as (api, _), self.assertRaises(ApiProblem) as raised:
            api.evaluate_catch_test(QUESTION)

        self.assertEqual("Two errors. #/catches: Add a catch. units: Choose one.", str(raised.exception))
        found = raised.exception
        self.assertEqual(("#/catches", "Add a catch.", 2), (found.pointer, found.sentence, len(found.errors)))

    def test_an_answer_that_is_no_problem_of_the_service_is_raised_with_its_status(self):
        for body in (b"<html>Bad gateway", b"[1]", b'{"detail": "x", "errors": 1}', b"\xff"):
            with self.subTest(body), against(raw(502, body)) as (api, _), self.assertRaises(ApiProblem) as raised:
                api.list_units()

            found = raised.exception
            self.assertEqual((502, None, []), (found.status, found.code, found.errors))
            self.assertIn("502", str(raised.exception))


class Records(unittest.TestCase):
    def test_an_unchanged_record_is_none(self):
        with against(raw(304, b"", {"ETag": '"r1"'})) as (api, asked):
            self.assertIsNone(api.get_scale("1", if_none_match='"r1"'))

            self.assertEqual('"r1"', asked[0].headers["If-None-Match"])

    def test_what_the_service_keeps_itself_is_not_editable(self):
        with against(STORED) as (api, _):
            self.assertEqual({"id": "1", **SCALE}, api.create_scale(SCALE).editable)

    def test_a_replayed_answer_says_so(self):
        with against(json_answer(200, {"id": "1"}, {"ETag": '"r1"', "Idempotent-Replayed": "true"})) as (api, _):
            self.assertTrue(api.create_scale(SCALE).replayed)

    def test_an_id_is_part_of_the_path_and_nothing_else(self):
        with against(STORED) as (api, asked):
            api.get_scale("../keys?limit=1")

            self.assertEqual("/v1/scales/..%2Fkeys%3Flimit%3D1", asked[0].target)

    def test_a_number_that_json_has_not_is_refused_before_it_is_sent(self):
        with against(UNITS) as (api, asked), self.assertRaises(ValueError):
            api.evaluate_catch_test({"catches": [float("nan")]})

        self.assertEqual([], asked)

import json
import os
import ssl
import threading
import time
import unittest

from calibration_client import ApiProblem, IncompleteBatch, NoAnswer, Retries
from stub import against, cut, json_answer, lines_of, problem, raw

NDJSON = {"Content-Type": "application/x-ndjson"}


def line_by_line(handler):
    """Answers each line as it comes."""
    begin(handler)
    for number, line in enumerate(lines_of(handler), 1):
        asked = json.loads(line)["number"]
        answer = {"problem": problem(422, "number-out-of-range")} if asked < 0 else {"result": {"twice": 2 * asked}}
        piece(handler, json.dumps({"line": number, **answer}).encode() + b"\n")
    piece(handler, b"")


line_by_line.reads = False


def begin(handler):
    handler.send_response(200)
    handler.send_header("Content-Type", "application/x-ndjson")
    handler.send_header("Transfer-Encoding", "chunked")
    handler.end_headers()


def piece(handler, data):
    handler.wfile.write(b"%x\r\n%b\r\n" % (len(data), data))


def whole(text):
    return raw(200, text.encode(), NDJSON)


class Batches(unittest.TestCase):
    encrypted = False

    def against(self, *answers, **options):
        return against(*answers, encrypted=self.encrypted, **self.options(), **options)

    def options(self):
        return {}

    def test_answers_come_while_questions_are_still_being_made_in_order(self):
        answered = []

        def questions():
            for number in range(1, 6):
                yield {"number": number}
                # The next question waits until this one is answered: only a client that streams both ways gets to the end.
                while len(answered) < number:
                    time.sleep(0.002)

        with self.against(line_by_line) as (api, asked):
            for line in api.evaluate_catch_test_batch(questions()):
                answered.append((line["line"], line["result"]["twice"]))

            self.assertEqual([(1, 2), (2, 4), (3, 6), (4, 8), (5, 10)], answered)
            self.assertEqual("/v1/calculations/catch-test/batch", asked[0].target)
            self.assertEqual(["application/x-ndjson"] * 2, [asked[0].headers["Content-Type"], asked[0].headers["Accept"]])

    def test_a_question_that_is_refused_has_its_problem_on_its_own_line(self):
        with self.against(line_by_line) as (api, asked):
            lines = list(api.evaluate_catch_test_batch([{"number": 1}, {"number": -1}, {"number": 3}], units="us"))

            seen = [one["result"]["twice"] if "result" in one else one["problem"]["errors"][0]["code"] for one in lines]
            self.assertEqual([2, "number-out-of-range", 6], seen)
            self.assertEqual("/v1/calculations/catch-test/batch?units=us", asked[0].target)

    def test_many_questions_pass_through_whoever_reads_slowly(self):
        many, filler = 3_000, "x" * 2_000

        def made():
            return ({"number": number, "note": filler} for number in range(many))

        for questions in (list(made()), made()):
            with self.subTest(type(questions).__name__), self.against(line_by_line) as (api, _):
                lines = api.evaluate_catch_test_batch(questions)
                next(lines)
                # Now every buffer on the way fills up.
                time.sleep(0.2)
                self.assertEqual([2 * number for number in range(1, many)], [line["result"]["twice"] for line in lines])

    def test_lines_are_put_together_again_wherever_the_network_cuts_them(self):
        def byte_by_byte(handler):
            begin(handler)
            for byte in '{"line":1,"result":{"twice":"zwölf"}}\n\n{"line":2,"result":{"twice":"€"}}'.encode():
                piece(handler, bytes([byte]))
            piece(handler, b"")

        with self.against(byte_by_byte) as (api, _):
            self.assertEqual(["zwölf", "€"], [one["result"]["twice"] for one in api.evaluate_catch_test_batch([{}, {}])])

    def test_a_batch_that_is_refused_as_a_whole_raises_its_problem(self):
        for questions in ([{"number": 1}], ({"number": number} for number in range(1))):
            refusal = json_answer(406, problem(406, "not-acceptable"))
            with self.subTest(type(questions).__name__), self.against(refusal) as (api, _), self.assertRaises(ApiProblem) as raised:
                list(api.evaluate_catch_test_batch(questions))

            self.assertEqual("not-acceptable", raised.exception.code)

    def test_a_list_of_questions_is_sent_again_when_the_service_is_busy_or_the_answer_was_lost(self):
        busy = json_answer(503, problem(503, "busy"), {"Retry-After": "0"})
        with self.against(busy, cut, whole('{"line":1,"result":{}}\n')) as (api, asked):
            self.assertEqual(1, len(list(api.evaluate_catch_test_batch([{"number": 1}]))))

            self.assertEqual([b'{"number":1}\n'] * 3, [one.body for one in asked])

    def test_questions_that_were_made_on_the_way_are_not_sent_again(self):
        with self.against(json_answer(503, problem(503, "busy"), {"Retry-After": "0"})) as (api, asked), self.assertRaises(ApiProblem):
            list(api.evaluate_catch_test_batch({"number": number} for number in range(1)))
        self.assertEqual(1, len(asked))

        with self.against(cut) as (api, asked), self.assertRaises(NoAnswer):
            list(api.evaluate_catch_test_batch({"number": number} for number in range(1)))
        self.assertEqual(1, len(asked))

    def test_an_answer_that_ends_too_early_is_not_taken_for_the_whole(self):
        for text in ('{"line":1,"result":{}}\n', '{"line":1,"result":{}}\n{"line":2,"res'):
            with self.subTest(text), self.against(whole(text)) as (api, _), self.assertRaises(IncompleteBatch) as raised:
                list(api.evaluate_catch_test_batch([{}, {}, {}]))

            self.assertEqual(1, raised.exception.answered)
            self.assertIn("1 of the 3", str(raised.exception))

    def test_a_connection_that_breaks_off_says_how_far_it_came(self):
        def breaks(handler):
            begin(handler)
            piece(handler, b'{"line":1,"result":{}}\n')
            cut(handler)

        with self.against(breaks) as (api, _):
            seen = []
            with self.assertRaises(IncompleteBatch) as raised:
                for line in api.evaluate_catch_test_batch([{}, {}]):
                    seen.append(line["line"])

            self.assertEqual(([1], 1), (seen, raised.exception.answered))

    def test_a_service_that_owes_an_answer_and_says_nothing_is_not_waited_for_for_ever(self):
        def silent(handler):
            begin(handler)
            handler.rfile.read(1)

        with self.against(silent, timeout=2) as (api, _), self.assertRaises(IncompleteBatch) as raised:
            list(api.evaluate_catch_test_batch([{}]))

        self.assertIsInstance(raised.exception.__cause__, TimeoutError)

    def test_a_question_may_take_longer_than_the_service_may(self):
        def slow():
            yield {"number": 1}
            time.sleep(2.5)
            yield {"number": 2}

        with self.against(line_by_line, timeout=2) as (api, _):
            self.assertEqual([2, 4], [line["result"]["twice"] for line in api.evaluate_catch_test_batch(slow())])

    def test_what_the_questions_themselves_raise_comes_out(self):
        def broken():
            yield {"number": 1}
            raise OSError("the file ended")

        def broken_at_once():
            raise OSError("the file ended")
            yield

        for questions in (broken(), broken_at_once()):
            failing = self.assertRaisesRegex(OSError, "^the file ended$")
            with self.subTest(questions.__name__), self.against(line_by_line) as (api, _), failing:
                list(api.evaluate_catch_test_batch(questions))

    def test_whoever_stops_reading_stops_the_questions_too(self):
        stopped = threading.Event()

        def endless():
            try:
                for number in range(1_000_000):
                    yield {"number": number}
                    time.sleep(0.001)
            finally:
                stopped.set()

        with self.against(line_by_line) as (api, _):
            lines = api.evaluate_catch_test_batch(endless())
            for line in lines:
                if line["line"] == 3:
                    break
            lines.close()

            self.assertTrue(stopped.wait(10))

    def test_no_questions_have_no_answers(self):
        with self.against(line_by_line) as (api, _):
            self.assertEqual([], list(api.evaluate_catch_test_batch([])))


class EncryptedBatches(Batches):
    """The same over TLS, which two threads must not use at once."""

    encrypted = True

    def options(self):
        return {"tls": ssl.create_default_context(cafile=os.environ["CALIBRATION_TEST_CERTIFICATE"])}

    def test_a_service_that_cannot_show_who_it_is_is_not_asked(self):
        with against(line_by_line, encrypted=True, retries=Retries(attempts=4)) as (api, asked):
            for ask in (api.list_units, lambda: list(api.evaluate_catch_test_batch([{"number": 1}]))):
                with self.assertRaises(ssl.SSLCertVerificationError):
                    ask()

            self.assertEqual([], asked)

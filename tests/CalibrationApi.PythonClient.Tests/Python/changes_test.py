import unittest

from calibration_client import ApiProblem, Retries
from stub import against, cut, json_answer, problem


def page(numbers, after):
    return json_answer(200, {"items": [{"sequence": number, "cursor": f"c{number}"} for number in numbers], "after": after})


ONCE = Retries(attempts=1, longest_pause=0.001)


class Changes(unittest.TestCase):
    def test_changes_go_on_over_broken_connections_and_busy_services_each_once(self):
        busy = json_answer(503, problem(503, "service-busy"))
        answers = (page([1, 2], "c2"), cut, busy, page([], "e"), page([3], "c3"))
        with against(*answers, retries=ONCE) as (api, asked):
            seen = []
            for change in api.follow_changes(kind="plan", machine="m", limit=2):
                seen.append(change["sequence"])
                if len(seen) == 3:
                    break

            self.assertEqual([1, 2, 3], seen)
            usual = "wait=20s&kind=plan&machine=m&limit=2"
            self.assertEqual(
                [f"/v1/changes?{usual}", *(f"/v1/changes?after={after}&{usual}" for after in ("c2", "c2", "c2", "e"))],
                [one.target for one in asked],
            )

    def test_the_cursor_behind_the_change_at_hand_is_there_to_be_kept(self):
        with against(page([1, 2], "c2"), page([2], "c2")) as (api, asked):
            changes = api.follow_changes()
            self.assertEqual(1, next(iter(changes))["sequence"])
            self.assertEqual("c1", changes.after)

            self.assertEqual(2, next(iter(api.follow_changes(after=changes.after)))["sequence"])
            self.assertIn("after=c1", asked[1].target)

    def test_a_cursor_that_is_refused_is_raised_and_not_tried_again(self):
        with against(json_answer(410, problem(410, "database-restored"))) as (api, asked):
            with self.assertRaises(ApiProblem) as raised:
                next(iter(api.follow_changes(after="old")))

            self.assertEqual(("database-restored", 1), (raised.exception.code, len(asked)))

    def test_an_impatient_client_waits_no_longer_than_that(self):
        with against(page([1], "c1"), timeout=10) as (api, asked):
            next(iter(api.follow_changes()))

            self.assertIn("wait=5s", asked[0].target)

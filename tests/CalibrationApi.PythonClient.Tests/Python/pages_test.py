import unittest

from calibration_client import ApiProblem
from stub import against, json_answer, problem


# The address in `next` is the one that the service knows itself by, which its callers may not reach.
def page(items, cursor=None):
    return json_answer(200, {"items": items, **({"next": f"http://inside.example/v1/history?limit=2&cursor={cursor}"} if cursor else {})})


class Lists(unittest.TestCase):
    def test_iterating_follows_the_pages_with_the_same_question_at_the_callers_own_address(self):
        with against(page([1, 2], "a%2Bb"), page([3, 4], "c"), page([5])) as (api, asked):
            self.assertEqual([1, 2, 3, 4, 5], list(api.list_history(machine="m", limit=2)))

            self.assertEqual(
                ["/v1/history?machine=m&limit=2", "/v1/history?machine=m&limit=2&cursor=a%2Bb", "/v1/history?machine=m&limit=2&cursor=c"],
                [one.target for one in asked],
            )

    def test_pages_are_asked_for_only_when_they_are_wanted(self):
        with against(page([1, 2], "a"), page([3, 4], "b")) as (api, asked):
            for item in api.list_scales():
                if item == 2:
                    break

            self.assertEqual(1, len(asked))

    def test_a_list_can_be_iterated_twice_by_pages_and_as_a_whole(self):
        with against(page([1], "a"), page([2]), page([1], "a"), page([2])) as (api, _):
            scales = api.list_scales(include_retired=True)

            self.assertEqual([[1], [2]], list(scales.pages()))
            self.assertEqual([1, 2], scales.all())

    def test_a_page_that_is_refused_is_raised_where_it_is_read(self):
        with against(page([1], "a"), json_answer(400, problem(400, "cursor-invalid"))) as (api, _):
            seen = []
            with self.assertRaises(ApiProblem) as raised:
                for item in api.list_scales():
                    seen.append(item)

            self.assertEqual(([1], "cursor-invalid"), (seen, raised.exception.code))

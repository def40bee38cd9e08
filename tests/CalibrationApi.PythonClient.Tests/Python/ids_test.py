import time
import unittest
import uuid

from calibration_client import new_id, quantity


class Ids(unittest.TestCase):
    def test_an_id_is_a_uuid_of_version_7_of_now(self):
        before = time.time_ns() // 1_000_000
        made = uuid.UUID(new_id())

        self.assertEqual((7, uuid.RFC_4122), (made.version, made.variant))
        self.assertTrue(before <= made.int >> 80 <= time.time_ns() // 1_000_000)

    def test_ids_differ_and_sort_by_time(self):
        first = new_id()
        time.sleep(0.002)
        ids = {new_id() for _ in range(1_000)}

        self.assertEqual(1_000, len(ids))
        self.assertTrue(all(first < other for other in ids))

    def test_a_quantity_is_a_number_with_its_unit(self):
        self.assertEqual({"value": 9, "unit": "km/h"}, quantity(9, "km/h"))

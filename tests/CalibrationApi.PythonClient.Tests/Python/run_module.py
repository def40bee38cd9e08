"""Runs the tests of a module: name of the module, certificate for a server on this machine, contract."""

import os
import sys
import unittest

module, os.environ["CALIBRATION_TEST_CERTIFICATE"], os.environ["CALIBRATION_CONTRACT"] = sys.argv[1:]
unittest.main(module=module, argv=[module])

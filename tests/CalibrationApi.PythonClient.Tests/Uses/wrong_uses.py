"""Uses of the client that a type checker must refuse; the end of a line says by which of its rules."""

from calibration_client import CalibrationClient, quantity
from calibration_client.schema import CatchOfTest, MassPerAreaQuantity, MassQuantity

api = CalibrationClient("http://localhost:5000")
division = quantity(0.02, "kg")

wrong_dimension: MassQuantity = {"value": 12.5, "unit": "kg/ha"}  # wrong: reportAssignmentType
wrong_dimension_spoken: MassQuantity = quantity(12.5, "kg/ha")  # wrong: reportAssignmentType
unknown_unit: MassQuantity = {"value": 12.5, "unit": "kgs"}  # wrong: reportAssignmentType
unknown_unit_spoken = quantity(12.5, "kgs")  # wrong: reportCallIssue
no_unit: MassPerAreaQuantity = 68  # wrong: reportAssignmentType
revolutions_as_mass: CatchOfTest = {"net": quantity(40, "rev"), "revolutions": quantity(40, "rev")}  # wrong: reportAssignmentType
misspelt: CatchOfTest = {"nett": quantity(14.5, "kg")}  # wrong: reportAssignmentType
api.evaluate_catch_test({"scale": {"division": division}})  # wrong: reportArgumentType
api.evaluate_catch_test({"scale": {"division": division}, "catches": []}, units="imperial")  # wrong: reportArgumentType
api.replace_scale("id", {"name": "platform", "division": division})  # wrong: reportCallIssue
api.get_scale("id", if_match="r1")  # wrong: reportCallIssue
api.list_history(verdict="good")  # wrong: reportArgumentType
api.evaluate_catch_tset({})  # wrong: reportAttributeAccessIssue
api.create_key({"name": "tablet", "scopes": ["operator"]})  # wrong: reportArgumentType
print(api.get_key("id").record["key"])  # wrong: reportGeneralTypeIssues
api.revoke_key("id", {})  # wrong: reportArgumentType
print(api.list_history().all()[0]["verdikt"])  # wrong: reportGeneralTypeIssues

from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .correction_answer import CorrectionAnswer
    from .finding_answer import FindingAnswer
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .measured_mass_per_area import MeasuredMassPerArea
    from .outlet_answer import OutletAnswer
    from .rate_acceptance_answer import RateAcceptanceAnswer
    from .reason_answer import ReasonAnswer
    from .turns_answer import TurnsAnswer
    from .turn_test_answer import TurnTestAnswer

@dataclass
class DriveWheelTurnsAnswer(AdditionalDataHolder, Parsable):
    """
    Turns of a drive wheel, expected catches, and what turn tests say.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The rate against its target.
    acceptance: Optional[RateAcceptanceAnswer] = None
    # Ground that the machine covers in one turn of the wheel in the field.
    area_per_turn: Optional[AreaQuantity] = None
    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt somebody at the machine.
    cautions: Optional[list[CautionAnswer]] = None
    # Rolling circumference in use.
    circumference: Optional[LengthQuantity] = None
    # Where it comes from: `circumference` (stated), `measured-run` (distance over turns) or `diameter` (reckoned, and too long under load).
    circumference_from: Optional[str] = None
    # What would bring the rate to its target if it were proportional to the setting: a first step, test again.
    correction: Optional[CorrectionAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # Rate that the stated mass per revolution of the meter gives.
    expected_rate: Optional[MassPerAreaQuantity] = None
    # What was noticed beyond the verdict.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # The same for one revolution of the meter.
    needed_per_meter_revolution: Optional[MassPerRevolutionQuantity] = None
    # Mass that one turn of the wheel has to deliver over the whole width for the target rate.
    needed_per_turn: Optional[MassPerRevolutionQuantity] = None
    # Outlets that were weighed one by one, over all tests; empty when they were not.
    outlets: Optional[list[OutletAnswer]] = None
    # Rate that the turn tests give, with its uncertainty.
    rate: Optional[MeasuredMassPerArea] = None
    # Why; empty without a verdict.
    reasons: Optional[list[ReasonAnswer]] = None
    # Every turn test in the order given.
    turn_tests: Optional[list[TurnTestAnswer]] = None
    # For each area asked for, in that order.
    turns: Optional[list[TurnsAnswer]] = None
    # What to do about the setting: `investigate` (the rate is implausible), `repeat` (not sure enough, test again), `keep` (within tolerance of the target) or `adopt` (take the corrected setting, then test again). Absent without a turn test or a target rate.
    verdict: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DriveWheelTurnsAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DriveWheelTurnsAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DriveWheelTurnsAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .correction_answer import CorrectionAnswer
        from .finding_answer import FindingAnswer
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_area import MeasuredMassPerArea
        from .outlet_answer import OutletAnswer
        from .rate_acceptance_answer import RateAcceptanceAnswer
        from .reason_answer import ReasonAnswer
        from .turns_answer import TurnsAnswer
        from .turn_test_answer import TurnTestAnswer

        from .area_quantity import AreaQuantity
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .correction_answer import CorrectionAnswer
        from .finding_answer import FindingAnswer
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_area import MeasuredMassPerArea
        from .outlet_answer import OutletAnswer
        from .rate_acceptance_answer import RateAcceptanceAnswer
        from .reason_answer import ReasonAnswer
        from .turns_answer import TurnsAnswer
        from .turn_test_answer import TurnTestAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "acceptance": lambda n : setattr(self, 'acceptance', n.get_object_value(RateAcceptanceAnswer)),
            "areaPerTurn": lambda n : setattr(self, 'area_per_turn', n.get_object_value(AreaQuantity)),
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "circumference": lambda n : setattr(self, 'circumference', n.get_object_value(LengthQuantity)),
            "circumferenceFrom": lambda n : setattr(self, 'circumference_from', n.get_str_value()),
            "correction": lambda n : setattr(self, 'correction', n.get_object_value(CorrectionAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "expectedRate": lambda n : setattr(self, 'expected_rate', n.get_object_value(MassPerAreaQuantity)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "neededPerMeterRevolution": lambda n : setattr(self, 'needed_per_meter_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "neededPerTurn": lambda n : setattr(self, 'needed_per_turn', n.get_object_value(MassPerRevolutionQuantity)),
            "outlets": lambda n : setattr(self, 'outlets', n.get_collection_of_object_values(OutletAnswer)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MeasuredMassPerArea)),
            "reasons": lambda n : setattr(self, 'reasons', n.get_collection_of_object_values(ReasonAnswer)),
            "turnTests": lambda n : setattr(self, 'turn_tests', n.get_collection_of_object_values(TurnTestAnswer)),
            "turns": lambda n : setattr(self, 'turns', n.get_collection_of_object_values(TurnsAnswer)),
            "verdict": lambda n : setattr(self, 'verdict', n.get_str_value()),
        }
        return fields
    
    def serialize(self,writer: SerializationWriter) -> None:
        """
        Serializes information the current object
        param writer: Serialization writer to use to serialize this model
        Returns: None
        """
        if writer is None:
            raise TypeError("writer cannot be null.")
        writer.write_object_value("acceptance", self.acceptance)
        writer.write_object_value("areaPerTurn", self.area_per_turn)
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_object_value("circumference", self.circumference)
        writer.write_str_value("circumferenceFrom", self.circumference_from)
        writer.write_object_value("correction", self.correction)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("expectedRate", self.expected_rate)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_object_value("neededPerMeterRevolution", self.needed_per_meter_revolution)
        writer.write_object_value("neededPerTurn", self.needed_per_turn)
        writer.write_collection_of_object_values("outlets", self.outlets)
        writer.write_object_value("rate", self.rate)
        writer.write_collection_of_object_values("reasons", self.reasons)
        writer.write_collection_of_object_values("turnTests", self.turn_tests)
        writer.write_collection_of_object_values("turns", self.turns)
        writer.write_str_value("verdict", self.verdict)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .count_per_length_quantity import CountPerLengthQuantity
    from .distance_effect_answer import DistanceEffectAnswer
    from .finding_answer import FindingAnswer
    from .length_quantity import LengthQuantity
    from .measured_length import MeasuredLength
    from .measured_pulses_per_distance import MeasuredPulsesPerDistance
    from .measured_ratio import MeasuredRatio
    from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
    from .reason_answer import ReasonAnswer
    from .run_agreement_answer import RunAgreementAnswer
    from .run_answer import RunAnswer
    from .run_uncertainty_part import RunUncertaintyPart
    from .sensor_entry_answer import SensorEntryAnswer
    from .width_answer import WidthAnswer

@dataclass
class DistanceSensorAnswer(AdditionalDataHolder, Parsable):
    """
    What runs over a measured course say of a distance sensor.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How the runs agree.
    agreement: Optional[RunAgreementAnswer] = None
    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt somebody on the course.
    cautions: Optional[list[CautionAnswer]] = None
    # Pulses per distance found over those in force, less 1, with its interval: positive when the sensor gives more than the controller believes. Absent without a value in force.
    change: Optional[MeasuredRatio] = None
    # Distance driven from one pulse to the next.
    distance_per_pulse: Optional[LengthQuantity] = None
    # What happens if the numbers in the controller stay; absent when none of them is known.
    effect_if_numbers_stay: Optional[DistanceEffectAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What to type in; given with the verdict adopt when the controller's form is known.
    enter: Optional[SensorEntryAnswer] = None
    # What was noticed beyond the verdict.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # How many more runs a repeat takes; absent for other verdicts and when no number of runs would help.
    more_runs: Optional[int] = None
    # Probability that the truth is within the tolerance of the value in force.
    probability_within_tolerance: Optional[float] = None
    # Pulses per distance with their uncertainty; absent when turns were counted and the pulses of a turn are unknown.
    pulses_per_distance: Optional[MeasuredPulsesPerDistance] = None
    # Pulses per metre or foot.
    pulses_per_length: Optional[CountPerLengthQuantity] = None
    # Why.
    reasons: Optional[list[ReasonAnswer]] = None
    # Rolling circumference of the wheel under the load and on the ground of the runs; absent when its turns are unknown.
    rolling_circumference: Optional[MeasuredLength] = None
    # Every run in the order given.
    runs: Optional[list[RunAnswer]] = None
    # Runs like these that the wanted precision takes in all; absent when no practical number reaches it.
    runs_for_wanted_precision: Optional[int] = None
    # Slip against the reference runs, 1 - (distance per turn at work) / (distance per turn on the reference): positive when the wheel turns more often at work (it slips), negative when it turns less often (it skids).
    slip: Optional[MeasuredRatio] = None
    # All pulses over all distances: can be redone on paper.
    total_pulses_over_total_distance: Optional[PulsesPerDistanceQuantity] = None
    # Where the uncertainty comes from: standard uncertainties, relative; their squares add up.
    uncertainty_parts: Optional[list[RunUncertaintyPart]] = None
    # What to do: `investigate` (something is wrong with the runs), `repeat` (not sure enough yet), `keep` (the value in force is good enough) or `adopt` (type in the new value).
    verdict: Optional[str] = None
    # Width of the machine, as asked.
    width: Optional[WidthAnswer] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DistanceSensorAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DistanceSensorAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DistanceSensorAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .count_per_length_quantity import CountPerLengthQuantity
        from .distance_effect_answer import DistanceEffectAnswer
        from .finding_answer import FindingAnswer
        from .length_quantity import LengthQuantity
        from .measured_length import MeasuredLength
        from .measured_pulses_per_distance import MeasuredPulsesPerDistance
        from .measured_ratio import MeasuredRatio
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
        from .reason_answer import ReasonAnswer
        from .run_agreement_answer import RunAgreementAnswer
        from .run_answer import RunAnswer
        from .run_uncertainty_part import RunUncertaintyPart
        from .sensor_entry_answer import SensorEntryAnswer
        from .width_answer import WidthAnswer

        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .count_per_length_quantity import CountPerLengthQuantity
        from .distance_effect_answer import DistanceEffectAnswer
        from .finding_answer import FindingAnswer
        from .length_quantity import LengthQuantity
        from .measured_length import MeasuredLength
        from .measured_pulses_per_distance import MeasuredPulsesPerDistance
        from .measured_ratio import MeasuredRatio
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
        from .reason_answer import ReasonAnswer
        from .run_agreement_answer import RunAgreementAnswer
        from .run_answer import RunAnswer
        from .run_uncertainty_part import RunUncertaintyPart
        from .sensor_entry_answer import SensorEntryAnswer
        from .width_answer import WidthAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "agreement": lambda n : setattr(self, 'agreement', n.get_object_value(RunAgreementAnswer)),
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "change": lambda n : setattr(self, 'change', n.get_object_value(MeasuredRatio)),
            "distancePerPulse": lambda n : setattr(self, 'distance_per_pulse', n.get_object_value(LengthQuantity)),
            "effectIfNumbersStay": lambda n : setattr(self, 'effect_if_numbers_stay', n.get_object_value(DistanceEffectAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "enter": lambda n : setattr(self, 'enter', n.get_object_value(SensorEntryAnswer)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "moreRuns": lambda n : setattr(self, 'more_runs', n.get_int_value()),
            "probabilityWithinTolerance": lambda n : setattr(self, 'probability_within_tolerance', n.get_float_value()),
            "pulsesPerDistance": lambda n : setattr(self, 'pulses_per_distance', n.get_object_value(MeasuredPulsesPerDistance)),
            "pulsesPerLength": lambda n : setattr(self, 'pulses_per_length', n.get_object_value(CountPerLengthQuantity)),
            "reasons": lambda n : setattr(self, 'reasons', n.get_collection_of_object_values(ReasonAnswer)),
            "rollingCircumference": lambda n : setattr(self, 'rolling_circumference', n.get_object_value(MeasuredLength)),
            "runs": lambda n : setattr(self, 'runs', n.get_collection_of_object_values(RunAnswer)),
            "runsForWantedPrecision": lambda n : setattr(self, 'runs_for_wanted_precision', n.get_int_value()),
            "slip": lambda n : setattr(self, 'slip', n.get_object_value(MeasuredRatio)),
            "totalPulsesOverTotalDistance": lambda n : setattr(self, 'total_pulses_over_total_distance', n.get_object_value(PulsesPerDistanceQuantity)),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(RunUncertaintyPart)),
            "verdict": lambda n : setattr(self, 'verdict', n.get_str_value()),
            "width": lambda n : setattr(self, 'width', n.get_object_value(WidthAnswer)),
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
        writer.write_object_value("agreement", self.agreement)
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_object_value("change", self.change)
        writer.write_object_value("distancePerPulse", self.distance_per_pulse)
        writer.write_object_value("effectIfNumbersStay", self.effect_if_numbers_stay)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("enter", self.enter)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_int_value("moreRuns", self.more_runs)
        writer.write_float_value("probabilityWithinTolerance", self.probability_within_tolerance)
        writer.write_object_value("pulsesPerDistance", self.pulses_per_distance)
        writer.write_object_value("pulsesPerLength", self.pulses_per_length)
        writer.write_collection_of_object_values("reasons", self.reasons)
        writer.write_object_value("rollingCircumference", self.rolling_circumference)
        writer.write_collection_of_object_values("runs", self.runs)
        writer.write_int_value("runsForWantedPrecision", self.runs_for_wanted_precision)
        writer.write_object_value("slip", self.slip)
        writer.write_object_value("totalPulsesOverTotalDistance", self.total_pulses_over_total_distance)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_str_value("verdict", self.verdict)
        writer.write_object_value("width", self.width)
        writer.write_additional_data_value(self.additional_data)
    


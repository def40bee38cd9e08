from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .effect_of_lot import EffectOfLot
    from .finding_answer import FindingAnswer
    from .lot_reason import LotReason
    from .lot_uncertainty import LotUncertainty
    from .measured_mass_per_revolution import MeasuredMassPerRevolution
    from .rate_of_lot import RateOfLot
    from .ratio_quantity import RatioQuantity
    from .start_value_of_lot import StartValueOfLot

@dataclass
class NewLotAnswer(AdditionalDataHolder, Parsable):
    """
    What another lot or treatment changes.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt a person. The product label goes first.
    cautions: Optional[list[CautionAnswer]] = None
    # What is sown when neither rate nor value is touched; absent when the rate cannot be computed.
    effect_if_nothing_is_changed: Optional[EffectOfLot] = None
    # What is sown when the rate is set anew, where it can be, and the value in force stays; absent without a rate.
    effect_if_value_stays: Optional[EffectOfLot] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed beyond the verdict.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in a few sentences that can be shown as they are.
    headline: Optional[str] = None
    # How much that is above the value in force; negative when below.
    predicted_change: Optional[RatioQuantity] = None
    # The mass per revolution expected of the new lot, with its interval: the value in force times the ratio of the bulk densities.
    predicted_mass_per_revolution: Optional[MeasuredMassPerRevolution] = None
    # Probability that the value in force is within the tolerance of the truth.
    probability_within_tolerance: Optional[float] = None
    # Probability that the truth is within the tolerance of the predicted value, were that typed in.
    probability_within_tolerance_of_prediction: Optional[float] = None
    # The rate for the new lot; absent when nothing says how many seeds there were.
    rate: Optional[RateOfLot] = None
    # Why.
    reasons: Optional[list[LotReason]] = None
    # What a catch plan takes as startValue.
    start_value: Optional[StartValueOfLot] = None
    # Where its uncertainty comes from: relative, their squares add up.
    uncertainty_parts: Optional[list[LotUncertainty]] = None
    # When to make a catch test: `test-now` (before sowing this lot), `test-at-next-fill` or `no-test-needed` (not because of this lot).
    verdict: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> NewLotAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: NewLotAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return NewLotAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .effect_of_lot import EffectOfLot
        from .finding_answer import FindingAnswer
        from .lot_reason import LotReason
        from .lot_uncertainty import LotUncertainty
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .rate_of_lot import RateOfLot
        from .ratio_quantity import RatioQuantity
        from .start_value_of_lot import StartValueOfLot

        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .effect_of_lot import EffectOfLot
        from .finding_answer import FindingAnswer
        from .lot_reason import LotReason
        from .lot_uncertainty import LotUncertainty
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .rate_of_lot import RateOfLot
        from .ratio_quantity import RatioQuantity
        from .start_value_of_lot import StartValueOfLot

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "effectIfNothingIsChanged": lambda n : setattr(self, 'effect_if_nothing_is_changed', n.get_object_value(EffectOfLot)),
            "effectIfValueStays": lambda n : setattr(self, 'effect_if_value_stays', n.get_object_value(EffectOfLot)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "predictedChange": lambda n : setattr(self, 'predicted_change', n.get_object_value(RatioQuantity)),
            "predictedMassPerRevolution": lambda n : setattr(self, 'predicted_mass_per_revolution', n.get_object_value(MeasuredMassPerRevolution)),
            "probabilityWithinTolerance": lambda n : setattr(self, 'probability_within_tolerance', n.get_float_value()),
            "probabilityWithinToleranceOfPrediction": lambda n : setattr(self, 'probability_within_tolerance_of_prediction', n.get_float_value()),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(RateOfLot)),
            "reasons": lambda n : setattr(self, 'reasons', n.get_collection_of_object_values(LotReason)),
            "startValue": lambda n : setattr(self, 'start_value', n.get_object_value(StartValueOfLot)),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(LotUncertainty)),
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
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_object_value("effectIfNothingIsChanged", self.effect_if_nothing_is_changed)
        writer.write_object_value("effectIfValueStays", self.effect_if_value_stays)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_object_value("predictedChange", self.predicted_change)
        writer.write_object_value("predictedMassPerRevolution", self.predicted_mass_per_revolution)
        writer.write_float_value("probabilityWithinTolerance", self.probability_within_tolerance)
        writer.write_float_value("probabilityWithinToleranceOfPrediction", self.probability_within_tolerance_of_prediction)
        writer.write_object_value("rate", self.rate)
        writer.write_collection_of_object_values("reasons", self.reasons)
        writer.write_object_value("startValue", self.start_value)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_str_value("verdict", self.verdict)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .finding_answer import FindingAnswer
    from .margin_answer import MarginAnswer
    from .rate_answer import RateAnswer
    from .risk_part import RiskPart

@dataclass
class StandRiskAnswer(AdditionalDataHolder, Parsable):
    """
    The rate for a minimum stand, what its margin costs, and how a rate of your own does.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # The rate that would just do in the mean of all seasons.
    at_mean: Optional[RateAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The rate of the question; absent without one.
    given: Optional[RateAnswer] = None
    # The outcome in a few sentences that can be shown as they are.
    headline: Optional[str] = None
    # What the needed rate is more than the rate at the mean; absent without a needed rate.
    margin: Optional[MarginAnswer] = None
    # The rate that reaches the minimum stand with that probability; absent when no sensible rate does.
    needed: Optional[RateAnswer] = None
    # Probability with which the minimum stand has to be reached.
    probability: Optional[float] = None
    # What makes the stand uncertain before it is sown: relative standard deviations.
    uncertainty_parts: Optional[list[RiskPart]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StandRiskAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StandRiskAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StandRiskAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .finding_answer import FindingAnswer
        from .margin_answer import MarginAnswer
        from .rate_answer import RateAnswer
        from .risk_part import RiskPart

        from .assumption_answer import AssumptionAnswer
        from .finding_answer import FindingAnswer
        from .margin_answer import MarginAnswer
        from .rate_answer import RateAnswer
        from .risk_part import RiskPart

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "atMean": lambda n : setattr(self, 'at_mean', n.get_object_value(RateAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "given": lambda n : setattr(self, 'given', n.get_object_value(RateAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "margin": lambda n : setattr(self, 'margin', n.get_object_value(MarginAnswer)),
            "needed": lambda n : setattr(self, 'needed', n.get_object_value(RateAnswer)),
            "probability": lambda n : setattr(self, 'probability', n.get_float_value()),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(RiskPart)),
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
        writer.write_object_value("atMean", self.at_mean)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_object_value("given", self.given)
        writer.write_str_value("headline", self.headline)
        writer.write_object_value("margin", self.margin)
        writer.write_object_value("needed", self.needed)
        writer.write_float_value("probability", self.probability)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_additional_data_value(self.additional_data)
    


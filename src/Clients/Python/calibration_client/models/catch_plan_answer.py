from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .finding_answer import FindingAnswer
    from .meter_plan_answer import MeterPlanAnswer
    from .step_answer import StepAnswer
    from .stop_answer import StopAnswer

@dataclass
class CatchPlanAnswer(AdditionalDataHolder, Parsable):
    """
    A planned catch test.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt somebody; show them with the steps.
    cautions: Optional[list[CautionAnswer]] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The plan in one sentence that can be shown as it is.
    headline: Optional[str] = None
    # The meters in the order given.
    meters: Optional[list[MeterPlanAnswer]] = None
    # What to do, as a set: a step may begin when every step it comes after is done.
    steps: Optional[list[StepAnswer]] = None
    # When to stop which meter, first stop first; stops closer than ten seconds share a group.
    stop_order: Optional[list[StopAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchPlanAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchPlanAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchPlanAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .finding_answer import FindingAnswer
        from .meter_plan_answer import MeterPlanAnswer
        from .step_answer import StepAnswer
        from .stop_answer import StopAnswer

        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .finding_answer import FindingAnswer
        from .meter_plan_answer import MeterPlanAnswer
        from .step_answer import StepAnswer
        from .stop_answer import StopAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "meters": lambda n : setattr(self, 'meters', n.get_collection_of_object_values(MeterPlanAnswer)),
            "steps": lambda n : setattr(self, 'steps', n.get_collection_of_object_values(StepAnswer)),
            "stopOrder": lambda n : setattr(self, 'stop_order', n.get_collection_of_object_values(StopAnswer)),
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
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("meters", self.meters)
        writer.write_collection_of_object_values("steps", self.steps)
        writer.write_collection_of_object_values("stopOrder", self.stop_order)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .capacity_answer import CapacityAnswer
    from .caution_answer import CautionAnswer
    from .element_answer import ElementAnswer
    from .fan_answer import FanAnswer
    from .finding_answer import FindingAnswer

@dataclass
class MeterSpeedAnswer(AdditionalDataHolder, Parsable):
    """
    Meter speeds, windows and the order of the elements.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # Field capacity at each ground speed.
    capacity: Optional[list[CapacityAnswer]] = None
    # What can hurt somebody who sets the fan; empty without one.
    cautions: Optional[list[CautionAnswer]] = None
    # The elements, best first.
    elements: Optional[list[ElementAnswer]] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # The air stream; absent when none was asked about.
    fan: Optional[FanAnswer] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterSpeedAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterSpeedAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterSpeedAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .capacity_answer import CapacityAnswer
        from .caution_answer import CautionAnswer
        from .element_answer import ElementAnswer
        from .fan_answer import FanAnswer
        from .finding_answer import FindingAnswer

        from .assumption_answer import AssumptionAnswer
        from .capacity_answer import CapacityAnswer
        from .caution_answer import CautionAnswer
        from .element_answer import ElementAnswer
        from .fan_answer import FanAnswer
        from .finding_answer import FindingAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "capacity": lambda n : setattr(self, 'capacity', n.get_collection_of_object_values(CapacityAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "elements": lambda n : setattr(self, 'elements', n.get_collection_of_object_values(ElementAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "fan": lambda n : setattr(self, 'fan', n.get_object_value(FanAnswer)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
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
        writer.write_collection_of_object_values("capacity", self.capacity)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_collection_of_object_values("elements", self.elements)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("fan", self.fan)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .air_flow_window import AirFlowWindow
    from .air_load_answer import AirLoadAnswer
    from .fan_speed_window import FanSpeedWindow

@dataclass
class FanAnswer(AdditionalDataHolder, Parsable):
    """
    Where the fan may stand for all products, and what its air carries.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Air flows that all products allow; absent when no product states any.
    air_flows: Optional[AirFlowWindow] = None
    # Fan speeds that all products allow; absent when no product states any.
    fan_speeds: Optional[FanSpeedWindow] = None
    # Where to set the fan, in a sentence that can be shown as it is.
    headline: Optional[str] = None
    # What the air carries at the lowest and the highest rates and ground speeds.
    loads: Optional[list[AirLoadAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FanAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FanAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FanAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .air_flow_window import AirFlowWindow
        from .air_load_answer import AirLoadAnswer
        from .fan_speed_window import FanSpeedWindow

        from .air_flow_window import AirFlowWindow
        from .air_load_answer import AirLoadAnswer
        from .fan_speed_window import FanSpeedWindow

        fields: dict[str, Callable[[Any], None]] = {
            "airFlows": lambda n : setattr(self, 'air_flows', n.get_object_value(AirFlowWindow)),
            "fanSpeeds": lambda n : setattr(self, 'fan_speeds', n.get_object_value(FanSpeedWindow)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "loads": lambda n : setattr(self, 'loads', n.get_collection_of_object_values(AirLoadAnswer)),
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
        writer.write_object_value("airFlows", self.air_flows)
        writer.write_object_value("fanSpeeds", self.fan_speeds)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("loads", self.loads)
        writer.write_additional_data_value(self.additional_data)
    


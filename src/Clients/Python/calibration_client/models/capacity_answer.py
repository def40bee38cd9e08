from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .speed_quantity import SpeedQuantity

@dataclass
class CapacityAnswer(AdditionalDataHolder, Parsable):
    """
    Area worked at one ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area worked in one hour.
    area_per_hour: Optional[AreaQuantity] = None
    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CapacityAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CapacityAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CapacityAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .speed_quantity import SpeedQuantity

        from .area_quantity import AreaQuantity
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "areaPerHour": lambda n : setattr(self, 'area_per_hour', n.get_object_value(AreaQuantity)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
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
        writer.write_object_value("areaPerHour", self.area_per_hour)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_additional_data_value(self.additional_data)
    


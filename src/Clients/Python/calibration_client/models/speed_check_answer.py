from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rotation_quantity import RotationQuantity
    from .speed_quantity import SpeedQuantity

@dataclass
class SpeedCheckAnswer(AdditionalDataHolder, Parsable):
    """
    Meter speed at another ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # The meter speed there.
    meter_speed: Optional[RotationQuantity] = None
    # Inside the limits.
    within_limits: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SpeedCheckAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SpeedCheckAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SpeedCheckAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rotation_quantity import RotationQuantity
        from .speed_quantity import SpeedQuantity

        from .rotation_quantity import RotationQuantity
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
            "withinLimits": lambda n : setattr(self, 'within_limits', n.get_bool_value()),
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
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_bool_value("withinLimits", self.within_limits)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .speed_quantity import SpeedQuantity

@dataclass
class RateWindowAnswer(AdditionalDataHolder, Parsable):
    """
    The rates that can be put down at a ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # Highest; absent without an upper limit.
    maximum: Optional[MassPerAreaQuantity] = None
    # Lowest; absent without a lower limit.
    minimum: Optional[MassPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RateWindowAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RateWindowAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RateWindowAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .speed_quantity import SpeedQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "maximum": lambda n : setattr(self, 'maximum', n.get_object_value(MassPerAreaQuantity)),
            "minimum": lambda n : setattr(self, 'minimum', n.get_object_value(MassPerAreaQuantity)),
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
        writer.write_object_value("maximum", self.maximum)
        writer.write_object_value("minimum", self.minimum)
        writer.write_additional_data_value(self.additional_data)
    


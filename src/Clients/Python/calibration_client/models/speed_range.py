from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .speed_quantity import SpeedQuantity

@dataclass
class SpeedRange(Parsable):
    """
    A range of ground speeds.
    """
    # Fastest. Range: above 0 and up to 100 km/h.
    maximum: Optional[SpeedQuantity] = None
    # Slowest. Range: above 0 and up to 100 km/h.
    minimum: Optional[SpeedQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SpeedRange:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SpeedRange
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SpeedRange()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .speed_quantity import SpeedQuantity

        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "maximum": lambda n : setattr(self, 'maximum', n.get_object_value(SpeedQuantity)),
            "minimum": lambda n : setattr(self, 'minimum', n.get_object_value(SpeedQuantity)),
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
        writer.write_object_value("maximum", self.maximum)
        writer.write_object_value("minimum", self.minimum)
    


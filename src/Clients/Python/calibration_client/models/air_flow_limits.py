from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .volume_per_time_quantity import VolumePerTimeQuantity

@dataclass
class AirFlowLimits(Parsable):
    """
    Air flows between which a product is carried and not damaged.
    """
    # Most. No default. Range: above 0 and up to 1000000 m3/h.
    maximum: Optional[VolumePerTimeQuantity] = None
    # Least. No default. Range: above 0 and up to 1000000 m3/h.
    minimum: Optional[VolumePerTimeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AirFlowLimits:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AirFlowLimits
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AirFlowLimits()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .volume_per_time_quantity import VolumePerTimeQuantity

        from .volume_per_time_quantity import VolumePerTimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "maximum": lambda n : setattr(self, 'maximum', n.get_object_value(VolumePerTimeQuantity)),
            "minimum": lambda n : setattr(self, 'minimum', n.get_object_value(VolumePerTimeQuantity)),
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
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rotation_quantity import RotationQuantity

@dataclass
class RotationLimits(Parsable):
    """
    Meter speeds between which an element turns evenly and its drive keeps up.
    """
    # Fastest. No default. Range: above 0 and up to 10000 rpm.
    maximum: Optional[RotationQuantity] = None
    # Slowest. No default. Range: 0 to 10000 rpm.
    minimum: Optional[RotationQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RotationLimits:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RotationLimits
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RotationLimits()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rotation_quantity import RotationQuantity

        from .rotation_quantity import RotationQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "maximum": lambda n : setattr(self, 'maximum', n.get_object_value(RotationQuantity)),
            "minimum": lambda n : setattr(self, 'minimum', n.get_object_value(RotationQuantity)),
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
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .volume_quantity import VolumeQuantity

@dataclass
class TankOfMachine(Parsable):
    """
    A tank.
    """
    # What the owner calls it.
    name: Optional[str] = None
    # Its volume. No default. Range: above 0 and up to 1000 m3.
    volume: Optional[VolumeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TankOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TankOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TankOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .volume_quantity import VolumeQuantity

        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "volume": lambda n : setattr(self, 'volume', n.get_object_value(VolumeQuantity)),
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
        writer.write_str_value("name", self.name)
        writer.write_object_value("volume", self.volume)
    


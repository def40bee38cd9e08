from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .volume_quantity import VolumeQuantity

@dataclass
class ContainerOfTest(Parsable):
    """
    The container of the catches.
    """
    # Mass of the empty container, for catches that give a net mass or no tare above zero. It is never taken off: it only tells what a forgotten tare would look like. No default. Range: 0 to 10 t.
    tare: Optional[MassQuantity] = None
    # Volume; with the bulk density of the product it says when the container runs over. No default. Range: above 0 and up to 10 m3.
    volume: Optional[VolumeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ContainerOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ContainerOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ContainerOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .volume_quantity import VolumeQuantity

        from .mass_quantity import MassQuantity
        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "tare": lambda n : setattr(self, 'tare', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("tare", self.tare)
        writer.write_object_value("volume", self.volume)
    


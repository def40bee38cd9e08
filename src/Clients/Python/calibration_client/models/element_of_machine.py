from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rotation_limits import RotationLimits
    from .volume_quantity import VolumeQuantity

@dataclass
class ElementOfMachine(Parsable):
    """
    A metering element: a roller, an auger.
    """
    # Volume that one revolution displaces. No default. Range: above 0 and up to 1 m3.
    displacement_per_revolution: Optional[VolumeQuantity] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Pockets or flutes that discharge one after the other in one revolution. No default.
    pockets_per_revolution: Optional[int] = None
    # Limits of its speed.
    speed_limits: Optional[RotationLimits] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ElementOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ElementOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ElementOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rotation_limits import RotationLimits
        from .volume_quantity import VolumeQuantity

        from .rotation_limits import RotationLimits
        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "displacementPerRevolution": lambda n : setattr(self, 'displacement_per_revolution', n.get_object_value(VolumeQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "pocketsPerRevolution": lambda n : setattr(self, 'pockets_per_revolution', n.get_int_value()),
            "speedLimits": lambda n : setattr(self, 'speed_limits', n.get_object_value(RotationLimits)),
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
        writer.write_object_value("displacementPerRevolution", self.displacement_per_revolution)
        writer.write_str_value("name", self.name)
        writer.write_int_value("pocketsPerRevolution", self.pockets_per_revolution)
        writer.write_object_value("speedLimits", self.speed_limits)
    


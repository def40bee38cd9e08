from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .rotation_quantity import RotationQuantity

@dataclass
class DeliveryPoint(Parsable):
    """
    A mass per revolution at one meter speed.
    """
    # The mass per revolution there. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # The meter speed. Range: above 0 and up to 10000 rpm.
    meter_speed: Optional[RotationQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DeliveryPoint:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DeliveryPoint
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DeliveryPoint()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .rotation_quantity import RotationQuantity

        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .rotation_quantity import RotationQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
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
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("meterSpeed", self.meter_speed)
    


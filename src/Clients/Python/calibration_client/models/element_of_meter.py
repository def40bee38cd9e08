from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .delivery_point import DeliveryPoint
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .rotation_limits import RotationLimits

@dataclass
class ElementOfMeter(Parsable):
    """
    A metering element with one product. Exactly one of massPerRevolution and measuredAt.
    """
    # Mass per revolution, the same at every speed. Give this or measuredAt. No default. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # Mass per revolution measured at several meter speeds; straight lines are drawn between them.
    measured_at: Optional[list[DeliveryPoint]] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the ground. No default.
    pockets_per_revolution: Optional[int] = None
    # Limits of its speed.
    speed_limits: Optional[RotationLimits] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ElementOfMeter:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ElementOfMeter
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ElementOfMeter()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .delivery_point import DeliveryPoint
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .rotation_limits import RotationLimits

        from .delivery_point import DeliveryPoint
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .rotation_limits import RotationLimits

        fields: dict[str, Callable[[Any], None]] = {
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "measuredAt": lambda n : setattr(self, 'measured_at', n.get_collection_of_object_values(DeliveryPoint)),
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
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_collection_of_object_values("measuredAt", self.measured_at)
        writer.write_str_value("name", self.name)
        writer.write_int_value("pocketsPerRevolution", self.pockets_per_revolution)
        writer.write_object_value("speedLimits", self.speed_limits)
    


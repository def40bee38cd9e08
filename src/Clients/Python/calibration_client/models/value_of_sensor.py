from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .pulses_per_distance_quantity import PulsesPerDistanceQuantity

@dataclass
class ValueOfSensor(Parsable):
    """
    A number as a controller holds it: exactly one of pulsesPerDistance, pulses with their distance, distancePerPulse and wheelCircumference.
    """
    # Distance over which the controller counts these pulses, for example 400 ft; goes with pulses. No default. Range: 1 to 10000 m.
    distance: Optional[LengthQuantity] = None
    # Distance driven from one pulse to the next. No default. Range: above 0 and up to 100 m.
    distance_per_pulse: Optional[LengthQuantity] = None
    # Pulses as the controller shows them, a plain count over `distance`. No default.
    pulses: Optional[float] = None
    # Pulses per distance. No default. Range: above 0 and up to 10000000 pulses/100m.
    pulses_per_distance: Optional[PulsesPerDistanceQuantity] = None
    # Rolling circumference of the wheel. No default. Range: above 0 and up to 100 m.
    wheel_circumference: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ValueOfSensor:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ValueOfSensor
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ValueOfSensor()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity

        from .length_quantity import LengthQuantity
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "distancePerPulse": lambda n : setattr(self, 'distance_per_pulse', n.get_object_value(LengthQuantity)),
            "pulses": lambda n : setattr(self, 'pulses', n.get_float_value()),
            "pulsesPerDistance": lambda n : setattr(self, 'pulses_per_distance', n.get_object_value(PulsesPerDistanceQuantity)),
            "wheelCircumference": lambda n : setattr(self, 'wheel_circumference', n.get_object_value(LengthQuantity)),
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
        writer.write_object_value("distance", self.distance)
        writer.write_object_value("distancePerPulse", self.distance_per_pulse)
        writer.write_float_value("pulses", self.pulses)
        writer.write_object_value("pulsesPerDistance", self.pulses_per_distance)
        writer.write_object_value("wheelCircumference", self.wheel_circumference)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .run_of_sensor_direction import RunOfSensor_direction
    from .time_quantity import TimeQuantity

@dataclass
class RunOfSensor(Parsable):
    """
    One run: the distance, and either pulses or turns.
    """
    # Which way it was driven: `there` or `back`. With runs of both kinds the two ways are compared.
    direction: Optional[RunOfSensor_direction] = None
    # Distance driven, as measured with a tape. Range: 1 to 10000 m.
    distance: Optional[LengthQuantity] = None
    # Standard uncertainty of this distance, beside the limit of the tape. Default as the distance resolution says: common practice, for two marks. Range: 0 to 100 m.
    distance_uncertainty: Optional[LengthQuantity] = None
    # Sensor pulses over it, a plain count. No default.
    pulses: Optional[float] = None
    # Time taken for the distance at an even speed; gives the ground speed. No default. Range: above 0 and up to 24 h.
    time: Optional[TimeQuantity] = None
    # Turns of the wheel over it, in place of pulses. No default. Range: 0.1 to 1000000 rev.
    turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RunOfSensor:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RunOfSensor
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RunOfSensor()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .run_of_sensor_direction import RunOfSensor_direction
        from .time_quantity import TimeQuantity

        from .length_quantity import LengthQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .run_of_sensor_direction import RunOfSensor_direction
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "direction": lambda n : setattr(self, 'direction', n.get_enum_value(RunOfSensor_direction)),
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "distanceUncertainty": lambda n : setattr(self, 'distance_uncertainty', n.get_object_value(LengthQuantity)),
            "pulses": lambda n : setattr(self, 'pulses', n.get_float_value()),
            "time": lambda n : setattr(self, 'time', n.get_object_value(TimeQuantity)),
            "turns": lambda n : setattr(self, 'turns', n.get_object_value(RevolutionsQuantity)),
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
        writer.write_enum_value("direction", self.direction)
        writer.write_object_value("distance", self.distance)
        writer.write_object_value("distanceUncertainty", self.distance_uncertainty)
        writer.write_float_value("pulses", self.pulses)
        writer.write_object_value("time", self.time)
        writer.write_object_value("turns", self.turns)
    


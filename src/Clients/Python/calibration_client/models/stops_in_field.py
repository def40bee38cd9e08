from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .length_quantity import LengthQuantity
    from .time_quantity import TimeQuantity

@dataclass
class StopsInField(Parsable):
    """
    What keeps the machine from working. turnTime goes with runLength, refillTime with areaPerFill.
    """
    # Area that a fill covers. No default. Range: 0.001 to 100000 ha.
    area_per_fill: Optional[AreaQuantity] = None
    # Time of one refill, from stop to start. No default. Range: above 0 and up to 24 h.
    refill_time: Optional[TimeQuantity] = None
    # Length of a run. No default. Range: 1 to 100000 m.
    run_length: Optional[LengthQuantity] = None
    # Time of one turn at the end of a run. No default. Range: above 0 and up to 1 h.
    turn_time: Optional[TimeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StopsInField:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StopsInField
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StopsInField()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity
        from .time_quantity import TimeQuantity

        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "areaPerFill": lambda n : setattr(self, 'area_per_fill', n.get_object_value(AreaQuantity)),
            "refillTime": lambda n : setattr(self, 'refill_time', n.get_object_value(TimeQuantity)),
            "runLength": lambda n : setattr(self, 'run_length', n.get_object_value(LengthQuantity)),
            "turnTime": lambda n : setattr(self, 'turn_time', n.get_object_value(TimeQuantity)),
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
        writer.write_object_value("areaPerFill", self.area_per_fill)
        writer.write_object_value("refillTime", self.refill_time)
        writer.write_object_value("runLength", self.run_length)
        writer.write_object_value("turnTime", self.turn_time)
    


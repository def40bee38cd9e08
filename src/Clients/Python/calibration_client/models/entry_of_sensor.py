from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .entry_of_sensor_form import EntryOfSensor_form
    from .entry_of_sensor_unit import EntryOfSensor_unit
    from .length_quantity import LengthQuantity

@dataclass
class EntryOfSensor(Parsable):
    """
    How a controller takes the number.
    """
    # Decimals that the controller takes.
    decimals: Optional[int] = None
    # Distance over which the controller counts pulses; only with that form. Default 100 m: the usual distance of controllers; common practice, no published source. Range: 1 to 10000 m.
    distance: Optional[LengthQuantity] = None
    # The form: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`.
    form: Optional[EntryOfSensor_form] = None
    # Unit of the number; needed for the two forms that are lengths.
    unit: Optional[EntryOfSensor_unit] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> EntryOfSensor:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: EntryOfSensor
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return EntryOfSensor()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .entry_of_sensor_form import EntryOfSensor_form
        from .entry_of_sensor_unit import EntryOfSensor_unit
        from .length_quantity import LengthQuantity

        from .entry_of_sensor_form import EntryOfSensor_form
        from .entry_of_sensor_unit import EntryOfSensor_unit
        from .length_quantity import LengthQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "decimals": lambda n : setattr(self, 'decimals', n.get_int_value()),
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "form": lambda n : setattr(self, 'form', n.get_enum_value(EntryOfSensor_form)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(EntryOfSensor_unit)),
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
        writer.write_int_value("decimals", self.decimals)
        writer.write_object_value("distance", self.distance)
        writer.write_enum_value("form", self.form)
        writer.write_enum_value("unit", self.unit)
    


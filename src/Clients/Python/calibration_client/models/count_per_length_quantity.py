from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_length_quantity_unit import CountPerLengthQuantity_unit

@dataclass
class CountPerLengthQuantity(Parsable):
    """
    Plants or seeds per length of row.
    """
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[CountPerLengthQuantity_unit] = None
    # The number, in the unit beside it.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CountPerLengthQuantity:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CountPerLengthQuantity
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CountPerLengthQuantity()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_length_quantity_unit import CountPerLengthQuantity_unit

        from .count_per_length_quantity_unit import CountPerLengthQuantity_unit

        fields: dict[str, Callable[[Any], None]] = {
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(CountPerLengthQuantity_unit)),
            "value": lambda n : setattr(self, 'value', n.get_float_value()),
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
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class SensorEntryAnswer(AdditionalDataHolder, Parsable):
    """
    A number for the controller.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Distance over which the pulses are counted; absent for a length.
    distance: Optional[LengthQuantity] = None
    # The form in which the controller takes it: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`.
    form: Optional[str] = None
    # Relative error of the pulses per distance that the rounding causes: positive when the controller then counts too little distance.
    rounding_error: Optional[RatioQuantity] = None
    # Its unit; absent for a count of pulses.
    unit: Optional[str] = None
    # The number to type in, already rounded to the controller's decimals: a count of pulses over `distance`, or a length in `unit`.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SensorEntryAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SensorEntryAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SensorEntryAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity

        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "form": lambda n : setattr(self, 'form', n.get_str_value()),
            "roundingError": lambda n : setattr(self, 'rounding_error', n.get_object_value(RatioQuantity)),
            "unit": lambda n : setattr(self, 'unit', n.get_str_value()),
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
        writer.write_object_value("distance", self.distance)
        writer.write_str_value("form", self.form)
        writer.write_object_value("roundingError", self.rounding_error)
        writer.write_str_value("unit", self.unit)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


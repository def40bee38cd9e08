from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rotation_quantity import RotationQuantity

@dataclass
class FanSpeedWindow(AdditionalDataHolder, Parsable):
    """
    The fan speeds that the limits of all products leave.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # At least one fan speed suits all products; when false, the minimum of one lies above the maximum of another.
    exists: Optional[bool] = None
    # Fastest: the lowest of the maxima; absent without any.
    maximum: Optional[RotationQuantity] = None
    # The product that sets it.
    maximum_of: Optional[str] = None
    # Slowest: the highest of the minima; absent without any.
    minimum: Optional[RotationQuantity] = None
    # The product that sets it.
    minimum_of: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FanSpeedWindow:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FanSpeedWindow
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FanSpeedWindow()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rotation_quantity import RotationQuantity

        from .rotation_quantity import RotationQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "exists": lambda n : setattr(self, 'exists', n.get_bool_value()),
            "maximum": lambda n : setattr(self, 'maximum', n.get_object_value(RotationQuantity)),
            "maximumOf": lambda n : setattr(self, 'maximum_of', n.get_str_value()),
            "minimum": lambda n : setattr(self, 'minimum', n.get_object_value(RotationQuantity)),
            "minimumOf": lambda n : setattr(self, 'minimum_of', n.get_str_value()),
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
        writer.write_bool_value("exists", self.exists)
        writer.write_object_value("maximum", self.maximum)
        writer.write_str_value("maximumOf", self.maximum_of)
        writer.write_object_value("minimum", self.minimum)
        writer.write_str_value("minimumOf", self.minimum_of)
        writer.write_additional_data_value(self.additional_data)
    


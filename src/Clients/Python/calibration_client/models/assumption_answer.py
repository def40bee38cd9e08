from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .any_quantity import AnyQuantity

@dataclass
class AssumptionAnswer(AdditionalDataHolder, Parsable):
    """
    A value that was used although the question did not state it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The meter it is about, where the question held several.
    meter: Optional[str] = None
    # The member that overrides it.
    name: Optional[str] = None
    # Published source, common practice or judgement, in words.
    origin: Optional[str] = None
    # The value, where it is a quantity.
    value: Optional[AnyQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AssumptionAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AssumptionAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AssumptionAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .any_quantity import AnyQuantity

        from .any_quantity import AnyQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "origin": lambda n : setattr(self, 'origin', n.get_str_value()),
            "value": lambda n : setattr(self, 'value', n.get_object_value(AnyQuantity)),
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
        writer.write_str_value("meter", self.meter)
        writer.write_str_value("name", self.name)
        writer.write_str_value("origin", self.origin)
        writer.write_object_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


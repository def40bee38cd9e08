from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .value_of_element_unit import ValueOfElement_unit

@dataclass
class ValueOfElement(AdditionalDataHolder, Parsable):
    """
    Mass per revolution of an element with the product.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The element.
    element: Optional[str] = None
    # Where it comes from: a `value-in-force`, the plan's `start-value`, or the volume that the element displaces (`displacement`).
    from_: Optional[str] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[ValueOfElement_unit] = None
    # The number, in the unit beside it.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ValueOfElement:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ValueOfElement
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ValueOfElement()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .value_of_element_unit import ValueOfElement_unit

        from .value_of_element_unit import ValueOfElement_unit

        fields: dict[str, Callable[[Any], None]] = {
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "from": lambda n : setattr(self, 'from_', n.get_str_value()),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(ValueOfElement_unit)),
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
        writer.write_str_value("element", self.element)
        writer.write_str_value("from", self.from_)
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


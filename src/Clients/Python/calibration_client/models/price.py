from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .price_per import Price_per

@dataclass
class Price(Parsable):
    """
    A price per mass.
    """
    # ISO 4217 currency code, for example EUR.
    currency: Optional[str] = None
    # The mass that the amount buys, as a unit of mass.
    per: Optional[Price_per] = None
    # Amount of money for one `per`.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> Price:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: Price
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return Price()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .price_per import Price_per

        from .price_per import Price_per

        fields: dict[str, Callable[[Any], None]] = {
            "currency": lambda n : setattr(self, 'currency', n.get_str_value()),
            "per": lambda n : setattr(self, 'per', n.get_enum_value(Price_per)),
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
        writer.write_str_value("currency", self.currency)
        writer.write_enum_value("per", self.per)
        writer.write_float_value("value", self.value)
    


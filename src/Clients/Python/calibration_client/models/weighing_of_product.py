from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity

@dataclass
class WeighingOfProduct(Parsable):
    """
    One weighing, as gross and tare (or the sharedTare) or as net.
    """
    # Mass with the container. No default. Range: above 0 and up to 1000 t.
    gross: Optional[MassQuantity] = None
    # Net mass, where the scale was zeroed with the container. No default. Range: above 0 and up to 1000 t.
    net: Optional[MassQuantity] = None
    # Mass of the empty container. No default. Range: above 0 and up to 1000 t.
    tare: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WeighingOfProduct:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WeighingOfProduct
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WeighingOfProduct()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity

        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "gross": lambda n : setattr(self, 'gross', n.get_object_value(MassQuantity)),
            "net": lambda n : setattr(self, 'net', n.get_object_value(MassQuantity)),
            "tare": lambda n : setattr(self, 'tare', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("gross", self.gross)
        writer.write_object_value("net", self.net)
        writer.write_object_value("tare", self.tare)
    


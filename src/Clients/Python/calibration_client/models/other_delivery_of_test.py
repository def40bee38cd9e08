from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity

@dataclass
class OtherDeliveryOfTest(Parsable):
    """
    What another metering element or another product would give.
    """
    # The mass per revolution to expect of it. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # What the owner calls it.
    name: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> OtherDeliveryOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: OtherDeliveryOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return OtherDeliveryOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity

        from .mass_per_revolution_quantity import MassPerRevolutionQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
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
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_str_value("name", self.name)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity

@dataclass
class WidthOfMachine(Parsable):
    """
    The width of a machine: built, driven and typed in.
    """
    # Width typed into the controller. Default openers times spacing: common practice. Range: 0.01 to 200 m.
    in_force: Optional[LengthQuantity] = None
    # Number of openers.
    openers: Optional[int] = None
    # Measured distance from a mark on the machine to the same mark in the next pass. Default openers times spacing: judgement, no overlap and no gap between passes. Range: 0.01 to 200 m.
    pass_to_pass: Optional[LengthQuantity] = None
    # Distance between neighbouring openers. Range: 0.01 to 10 m.
    spacing: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WidthOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WidthOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WidthOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity

        from .length_quantity import LengthQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "inForce": lambda n : setattr(self, 'in_force', n.get_object_value(LengthQuantity)),
            "openers": lambda n : setattr(self, 'openers', n.get_int_value()),
            "passToPass": lambda n : setattr(self, 'pass_to_pass', n.get_object_value(LengthQuantity)),
            "spacing": lambda n : setattr(self, 'spacing', n.get_object_value(LengthQuantity)),
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
        writer.write_object_value("inForce", self.in_force)
        writer.write_int_value("openers", self.openers)
        writer.write_object_value("passToPass", self.pass_to_pass)
        writer.write_object_value("spacing", self.spacing)
    


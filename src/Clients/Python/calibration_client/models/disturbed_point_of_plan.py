from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class DisturbedPointOfPlan(Parsable):
    """
    Something that the test disturbs, in the owner's words.
    """
    # What it is, for example the fan drive.
    name: Optional[str] = None
    # What is done to it before the catch.
    to_open: Optional[str] = None
    # How it is put back.
    to_restore: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DisturbedPointOfPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DisturbedPointOfPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DisturbedPointOfPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "toOpen": lambda n : setattr(self, 'to_open', n.get_str_value()),
            "toRestore": lambda n : setattr(self, 'to_restore', n.get_str_value()),
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
        writer.write_str_value("name", self.name)
        writer.write_str_value("toOpen", self.to_open)
        writer.write_str_value("toRestore", self.to_restore)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class WorkspaceRequest(Parsable):
    """
    A workspace: what one farm, dealer or customer keeps, and what only its keys open.
    """
    # The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one. May be repeated, unchanged, when replacing.
    id: Optional[str] = None
    # What it is called.
    name: Optional[str] = None
    # Its keys open nothing; everything stays stored. Default false.
    retired: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WorkspaceRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WorkspaceRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WorkspaceRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
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
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_bool_value("retired", self.retired)
    


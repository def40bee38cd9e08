from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .key_request_scopes import KeyRequest_scopes

@dataclass
class KeyRequest(Parsable):
    """
    A new key.
    """
    # From when on it opens nothing, RFC 3339. Default never.
    expires_at: Optional[datetime.datetime] = None
    # The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one.
    id: Optional[str] = None
    # Who or what uses the key, so that it can be told apart later.
    name: Optional[str] = None
    # What the key may do; none implies another. `calculate`: calculations, which store nothing. `read`: records and what follows from them. `write`: storing records. `admin`: keys and audit of the workspace.
    scopes: Optional[list[KeyRequest_scopes]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> KeyRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: KeyRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return KeyRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .key_request_scopes import KeyRequest_scopes

        from .key_request_scopes import KeyRequest_scopes

        fields: dict[str, Callable[[Any], None]] = {
            "expiresAt": lambda n : setattr(self, 'expires_at', n.get_datetime_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "scopes": lambda n : setattr(self, 'scopes', n.get_collection_of_enum_values(KeyRequest_scopes)),
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
        writer.write_datetime_value("expiresAt", self.expires_at)
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_collection_of_enum_values("scopes", self.scopes)
    


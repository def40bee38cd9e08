from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class RotationRequest(Parsable):
    """
    A key takes the place of another.
    """
    # From when on the new key opens nothing, RFC 3339. Default: it gets as long a life as the old one was given.
    expires_at: Optional[datetime.datetime] = None
    # The sender's own id for the new key, a UUID of version 7 in lower case. Default: the service makes one.
    id: Optional[str] = None
    # Until when the old key goes on, RFC 3339; it does not outlive its own expiry. Now ends it at once.
    until: Optional[datetime.datetime] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RotationRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RotationRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RotationRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "expiresAt": lambda n : setattr(self, 'expires_at', n.get_datetime_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "until": lambda n : setattr(self, 'until', n.get_datetime_value()),
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
        writer.write_datetime_value("until", self.until)
    


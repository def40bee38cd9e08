from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class KeyAnswer(AdditionalDataHolder, Parsable):
    """
    A key as the service keeps it: everything but its secret.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # When it was made (UTC).
    created_at: Optional[datetime.datetime] = None
    # Id of the key that made it; absent when the command of the service did.
    created_by: Optional[str] = None
    # From when on it opens nothing (UTC); absent for never.
    expires_at: Optional[datetime.datetime] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # When it was used last (UTC), to about a minute; absent for never.
    last_used_at: Optional[datetime.datetime] = None
    # Who or what uses it.
    name: Optional[str] = None
    # Id of the key that takes its place.
    replaced_by: Optional[str] = None
    # Id of the key that it takes the place of.
    replaces: Optional[str] = None
    # When it was revoked (UTC); absent while it was not.
    revoked_at: Optional[datetime.datetime] = None
    # Why it was revoked.
    revoked_because: Optional[str] = None
    # What it may do: `calculate`, `read`, `write`, `admin`; `operator` for keys that the command of the service made for whoever runs the installation.
    scopes: Optional[list[str]] = None
    # What the text of the key begins with. It is no secret; it says which key a text belongs to.
    start: Optional[str] = None
    # `live`, `expired` or `revoked`.
    state: Optional[str] = None
    # Id of the workspace that it opens.
    workspace: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> KeyAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: KeyAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return KeyAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "createdBy": lambda n : setattr(self, 'created_by', n.get_str_value()),
            "expiresAt": lambda n : setattr(self, 'expires_at', n.get_datetime_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "lastUsedAt": lambda n : setattr(self, 'last_used_at', n.get_datetime_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "replacedBy": lambda n : setattr(self, 'replaced_by', n.get_str_value()),
            "replaces": lambda n : setattr(self, 'replaces', n.get_str_value()),
            "revokedAt": lambda n : setattr(self, 'revoked_at', n.get_datetime_value()),
            "revokedBecause": lambda n : setattr(self, 'revoked_because', n.get_str_value()),
            "scopes": lambda n : setattr(self, 'scopes', n.get_collection_of_primitive_values(str)),
            "start": lambda n : setattr(self, 'start', n.get_str_value()),
            "state": lambda n : setattr(self, 'state', n.get_str_value()),
            "workspace": lambda n : setattr(self, 'workspace', n.get_str_value()),
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
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_str_value("createdBy", self.created_by)
        writer.write_datetime_value("expiresAt", self.expires_at)
        writer.write_str_value("id", self.id)
        writer.write_datetime_value("lastUsedAt", self.last_used_at)
        writer.write_str_value("name", self.name)
        writer.write_str_value("replacedBy", self.replaced_by)
        writer.write_str_value("replaces", self.replaces)
        writer.write_datetime_value("revokedAt", self.revoked_at)
        writer.write_str_value("revokedBecause", self.revoked_because)
        writer.write_collection_of_primitive_values("scopes", self.scopes)
        writer.write_str_value("start", self.start)
        writer.write_str_value("state", self.state)
        writer.write_str_value("workspace", self.workspace)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class AuditItem(AdditionalDataHolder, Parsable):
    """
    One thing that was done.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What: the name of the operation, as this contract has it; of a list, that it was exported.
    action: Optional[str] = None
    # Who: `key`; `local`, somebody at the machine of the service while there were no keys; `command`, the command of the service.
    actor: Optional[str] = None
    # When (UTC).
    at: Optional[str] = None
    # Id of the key; absent for the other actors.
    key: Optional[str] = None
    # Path of what was made, changed or exported.
    target: Optional[str] = None
    # Identifier under which the service's operator finds the request in the logs.
    trace_id: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AuditItem:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AuditItem
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AuditItem()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "action": lambda n : setattr(self, 'action', n.get_str_value()),
            "actor": lambda n : setattr(self, 'actor', n.get_str_value()),
            "at": lambda n : setattr(self, 'at', n.get_str_value()),
            "key": lambda n : setattr(self, 'key', n.get_str_value()),
            "target": lambda n : setattr(self, 'target', n.get_str_value()),
            "traceId": lambda n : setattr(self, 'trace_id', n.get_str_value()),
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
        writer.write_str_value("action", self.action)
        writer.write_str_value("actor", self.actor)
        writer.write_str_value("at", self.at)
        writer.write_str_value("key", self.key)
        writer.write_str_value("target", self.target)
        writer.write_str_value("traceId", self.trace_id)
        writer.write_additional_data_value(self.additional_data)
    


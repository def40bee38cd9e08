from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class RefusalItem(AdditionalDataHolder, Parsable):
    """
    How often requests were turned away on a day.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Why: the code of the problem that was answered. Known today: `key-missing`, `key-invalid`, `key-expired`, `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`.
    code: Optional[str] = None
    # How often.
    count: Optional[int] = None
    # The day in UTC.
    day: Optional[str] = None
    # Id of the key that was shown; absent where none is known.
    key: Optional[str] = None
    # The last time (UTC).
    last_at: Optional[datetime.datetime] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RefusalItem:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RefusalItem
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RefusalItem()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "count": lambda n : setattr(self, 'count', n.get_int_value()),
            "day": lambda n : setattr(self, 'day', n.get_str_value()),
            "key": lambda n : setattr(self, 'key', n.get_str_value()),
            "lastAt": lambda n : setattr(self, 'last_at', n.get_datetime_value()),
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
        writer.write_str_value("code", self.code)
        writer.write_int_value("count", self.count)
        writer.write_str_value("day", self.day)
        writer.write_str_value("key", self.key)
        writer.write_datetime_value("lastAt", self.last_at)
        writer.write_additional_data_value(self.additional_data)
    


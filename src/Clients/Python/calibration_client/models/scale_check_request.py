from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .known_mass_reading_of_check import KnownMassReadingOfCheck
    from .supersedes import Supersedes

@dataclass
class ScaleCheckRequest(Parsable):
    """
    A check of a scale against known masses.
    """
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one.
    id: Optional[str] = None
    # A remark, for example which masses were used.
    note: Optional[str] = None
    # When the check was made, RFC 3339 with offset.
    occurred_at: Optional[datetime.datetime] = None
    # The readings, each of one known mass.
    readings: Optional[list[KnownMassReadingOfCheck]] = None
    # Who made it.
    recorded_by: Optional[str] = None
    # Id of the scale.
    scale: Optional[str] = None
    # The wrong check that this one takes the place of.
    supersedes: Optional[Supersedes] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleCheckRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleCheckRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleCheckRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .known_mass_reading_of_check import KnownMassReadingOfCheck
        from .supersedes import Supersedes

        from .known_mass_reading_of_check import KnownMassReadingOfCheck
        from .supersedes import Supersedes

        fields: dict[str, Callable[[Any], None]] = {
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "readings": lambda n : setattr(self, 'readings', n.get_collection_of_object_values(KnownMassReadingOfCheck)),
            "recordedBy": lambda n : setattr(self, 'recorded_by', n.get_str_value()),
            "scale": lambda n : setattr(self, 'scale', n.get_str_value()),
            "supersedes": lambda n : setattr(self, 'supersedes', n.get_object_value(Supersedes)),
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
        writer.write_str_value("note", self.note)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_collection_of_object_values("readings", self.readings)
        writer.write_str_value("recordedBy", self.recorded_by)
        writer.write_str_value("scale", self.scale)
        writer.write_object_value("supersedes", self.supersedes)
    


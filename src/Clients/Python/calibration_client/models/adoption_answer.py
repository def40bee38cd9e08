from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .adoption_request import AdoptionRequest
    from .finding_answer import FindingAnswer
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .supersedes import Supersedes

@dataclass
class AdoptionAnswer(AdditionalDataHolder, Parsable):
    """
    A stored adoption.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The request exactly as entered.
    entered: Optional[AdoptionRequest] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # The date of that in the machine's time zone.
    local_date: Optional[datetime.date] = None
    # The mass per revolution that the controller uses since then.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # When it was typed in, with the offset it was entered with.
    occurred_at: Optional[datetime.datetime] = None
    # When the service received it.
    received_at: Optional[datetime.datetime] = None
    # The record that took its place, with the reason; absent while it stands.
    superseded_by: Optional[Supersedes] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AdoptionAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AdoptionAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AdoptionAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .adoption_request import AdoptionRequest
        from .finding_answer import FindingAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .supersedes import Supersedes

        from .adoption_request import AdoptionRequest
        from .finding_answer import FindingAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .supersedes import Supersedes

        fields: dict[str, Callable[[Any], None]] = {
            "entered": lambda n : setattr(self, 'entered', n.get_object_value(AdoptionRequest)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "localDate": lambda n : setattr(self, 'local_date', n.get_date_value()),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "receivedAt": lambda n : setattr(self, 'received_at', n.get_datetime_value()),
            "supersededBy": lambda n : setattr(self, 'superseded_by', n.get_object_value(Supersedes)),
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
        writer.write_object_value("entered", self.entered)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("id", self.id)
        writer.write_date_value("localDate", self.local_date)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_datetime_value("receivedAt", self.received_at)
        writer.write_object_value("supersededBy", self.superseded_by)
        writer.write_additional_data_value(self.additional_data)
    


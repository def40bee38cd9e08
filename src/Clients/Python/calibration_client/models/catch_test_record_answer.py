from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .catch_test_answer import CatchTestAnswer
    from .catch_test_request import CatchTestRequest
    from .finding_answer import FindingAnswer
    from .record_catch_test_request import RecordCatchTestRequest
    from .supersedes import Supersedes
    from .used_history import UsedHistory

@dataclass
class CatchTestRecordAnswer(AdditionalDataHolder, Parsable):
    """
    A stored catch test.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Version of the engine that evaluated it.
    engine_version: Optional[str] = None
    # The request exactly as entered.
    entered: Optional[RecordCatchTestRequest] = None
    # The evaluation.
    evaluation: Optional[CatchTestAnswer] = None
    # What was noticed about the records the test refers to.
    findings: Optional[list[FindingAnswer]] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # The date of that in the machine's time zone.
    local_date: Optional[datetime.date] = None
    # When the test was made, with the offset it was entered with.
    occurred_at: Optional[datetime.datetime] = None
    # When the service received it.
    received_at: Optional[datetime.datetime] = None
    # The complete question that was evaluated: the request joined with its records and its history.
    resolved: Optional[CatchTestRequest] = None
    # What came to light after the test; absent when nothing did.
    since_then: Optional[list[FindingAnswer]] = None
    # The record that took its place, with the reason; absent while the test stands.
    superseded_by: Optional[Supersedes] = None
    # What was taken from the history.
    used_history: Optional[UsedHistory] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchTestRecordAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchTestRecordAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchTestRecordAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .catch_test_answer import CatchTestAnswer
        from .catch_test_request import CatchTestRequest
        from .finding_answer import FindingAnswer
        from .record_catch_test_request import RecordCatchTestRequest
        from .supersedes import Supersedes
        from .used_history import UsedHistory

        from .catch_test_answer import CatchTestAnswer
        from .catch_test_request import CatchTestRequest
        from .finding_answer import FindingAnswer
        from .record_catch_test_request import RecordCatchTestRequest
        from .supersedes import Supersedes
        from .used_history import UsedHistory

        fields: dict[str, Callable[[Any], None]] = {
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "entered": lambda n : setattr(self, 'entered', n.get_object_value(RecordCatchTestRequest)),
            "evaluation": lambda n : setattr(self, 'evaluation', n.get_object_value(CatchTestAnswer)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "localDate": lambda n : setattr(self, 'local_date', n.get_date_value()),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "receivedAt": lambda n : setattr(self, 'received_at', n.get_datetime_value()),
            "resolved": lambda n : setattr(self, 'resolved', n.get_object_value(CatchTestRequest)),
            "sinceThen": lambda n : setattr(self, 'since_then', n.get_collection_of_object_values(FindingAnswer)),
            "supersededBy": lambda n : setattr(self, 'superseded_by', n.get_object_value(Supersedes)),
            "usedHistory": lambda n : setattr(self, 'used_history', n.get_object_value(UsedHistory)),
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
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("entered", self.entered)
        writer.write_object_value("evaluation", self.evaluation)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("id", self.id)
        writer.write_date_value("localDate", self.local_date)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_datetime_value("receivedAt", self.received_at)
        writer.write_object_value("resolved", self.resolved)
        writer.write_collection_of_object_values("sinceThen", self.since_then)
        writer.write_object_value("supersededBy", self.superseded_by)
        writer.write_object_value("usedHistory", self.used_history)
        writer.write_additional_data_value(self.additional_data)
    


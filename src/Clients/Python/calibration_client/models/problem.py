from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.api_error import APIError
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .problem_error import ProblemError

@dataclass
class Problem(APIError, AdditionalDataHolder, Parsable):
    """
    What went wrong and what to do about it (RFC 9457).
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What went wrong, in one sentence.
    detail: Optional[str] = None
    # Every error found, at least one.
    errors: Optional[list[ProblemError]] = None
    # The HTTP status.
    status: Optional[int] = None
    # The name of the status.
    title: Optional[str] = None
    # Identifier under which the service's operator finds this request in the logs.
    trace_id: Optional[str] = None
    # Kind of problem; `about:blank` says that the status tells it all, other kinds are those registered with IANA. Act on `errors[].code`; `/reference/codes` explains every one.
    type: Optional[str] = None
    # With 429: the policies of `RateLimit-Policy` that were exceeded.
    violated_policies: Optional[list[str]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> Problem:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: Problem
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return Problem()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .problem_error import ProblemError

        from .problem_error import ProblemError

        fields: dict[str, Callable[[Any], None]] = {
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "errors": lambda n : setattr(self, 'errors', n.get_collection_of_object_values(ProblemError)),
            "status": lambda n : setattr(self, 'status', n.get_int_value()),
            "title": lambda n : setattr(self, 'title', n.get_str_value()),
            "traceId": lambda n : setattr(self, 'trace_id', n.get_str_value()),
            "type": lambda n : setattr(self, 'type', n.get_str_value()),
            "violated-policies": lambda n : setattr(self, 'violated_policies', n.get_collection_of_primitive_values(str)),
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
        writer.write_str_value("detail", self.detail)
        writer.write_collection_of_object_values("errors", self.errors)
        writer.write_int_value("status", self.status)
        writer.write_str_value("title", self.title)
        writer.write_str_value("traceId", self.trace_id)
        writer.write_str_value("type", self.type)
        writer.write_collection_of_primitive_values("violated-policies", self.violated_policies)
        writer.write_additional_data_value(self.additional_data)
    
    @property
    def primary_message(self) -> Optional[str]:
        """
        The primary error message.
        """
        return super().message


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class CodeAnswer(AdditionalDataHolder, Parsable):
    """
    One code, what it comes from and what to do.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What it comes from, in a sentence.
    cause: Optional[str] = None
    # The code as answers carry it. It never changes its meaning.
    code: Optional[str] = None
    # Where it comes: an `error` in a problem, because the request has to be put right; a `refusal` in a problem, because a well-formed question has no sound answer; a `finding` among the findings and reasons of an answer; a `caution` where work can hurt somebody; a `mistake` among the likely mistakes of a catch test.
    kind: Optional[str] = None
    # What to do, in short sentences.
    remedy: Optional[str] = None
    # The severities that it comes with, as findings name them; absent when it is no finding. Known today: `note`, `warning`, `stop`.
    severities: Optional[list[str]] = None
    # The HTTP statuses that it comes with; absent when it comes with an answer.
    statuses: Optional[list[int]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CodeAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CodeAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CodeAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "cause": lambda n : setattr(self, 'cause', n.get_str_value()),
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "kind": lambda n : setattr(self, 'kind', n.get_str_value()),
            "remedy": lambda n : setattr(self, 'remedy', n.get_str_value()),
            "severities": lambda n : setattr(self, 'severities', n.get_collection_of_primitive_values(str)),
            "statuses": lambda n : setattr(self, 'statuses', n.get_collection_of_primitive_values(int)),
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
        writer.write_str_value("cause", self.cause)
        writer.write_str_value("code", self.code)
        writer.write_str_value("kind", self.kind)
        writer.write_str_value("remedy", self.remedy)
        writer.write_collection_of_primitive_values("severities", self.severities)
        writer.write_collection_of_primitive_values("statuses", self.statuses)
        writer.write_additional_data_value(self.additional_data)
    


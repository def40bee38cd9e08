from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class DifferenceAnswer(AdditionalDataHolder, Parsable):
    """
    One value that differs.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Where in the evaluation, as a JSON pointer.
    pointer: Optional[str] = None
    # The value now as JSON text; absent when there is none.
    recomputed: Optional[str] = None
    # The stored value as JSON text; absent when there was none.
    stored: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DifferenceAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DifferenceAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DifferenceAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "pointer": lambda n : setattr(self, 'pointer', n.get_str_value()),
            "recomputed": lambda n : setattr(self, 'recomputed', n.get_str_value()),
            "stored": lambda n : setattr(self, 'stored', n.get_str_value()),
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
        writer.write_str_value("pointer", self.pointer)
        writer.write_str_value("recomputed", self.recomputed)
        writer.write_str_value("stored", self.stored)
        writer.write_additional_data_value(self.additional_data)
    


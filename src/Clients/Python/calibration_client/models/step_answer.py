from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class StepAnswer(AdditionalDataHolder, Parsable):
    """
    One step.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Steps that come before.
    after: Optional[list[str]] = None
    # What to do.
    detail: Optional[str] = None
    # Identifier within the plan.
    id: Optional[str] = None
    # The meter it is about, if one.
    meter: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StepAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StepAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StepAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "after": lambda n : setattr(self, 'after', n.get_collection_of_primitive_values(str)),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
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
        writer.write_collection_of_primitive_values("after", self.after)
        writer.write_str_value("detail", self.detail)
        writer.write_str_value("id", self.id)
        writer.write_str_value("meter", self.meter)
        writer.write_additional_data_value(self.additional_data)
    


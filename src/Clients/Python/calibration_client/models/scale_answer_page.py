from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .scale_answer import ScaleAnswer

@dataclass
class ScaleAnswerPage(AdditionalDataHolder, Parsable):
    """
    A page of a list.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The records of this page.
    items: Optional[list[ScaleAnswer]] = None
    # Address of the next page; absent on the last one.
    next: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleAnswerPage:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleAnswerPage
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleAnswerPage()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .scale_answer import ScaleAnswer

        from .scale_answer import ScaleAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "items": lambda n : setattr(self, 'items', n.get_collection_of_object_values(ScaleAnswer)),
            "next": lambda n : setattr(self, 'next', n.get_str_value()),
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
        writer.write_collection_of_object_values("items", self.items)
        writer.write_str_value("next", self.next)
        writer.write_additional_data_value(self.additional_data)
    


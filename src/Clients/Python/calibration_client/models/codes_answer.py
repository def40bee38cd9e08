from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .code_answer import CodeAnswer

@dataclass
class CodesAnswer(AdditionalDataHolder, Parsable):
    """
    Every code that answers carry.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The codes, by kind and then in the order of the alphabet.
    codes: Optional[list[CodeAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CodesAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CodesAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CodesAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .code_answer import CodeAnswer

        from .code_answer import CodeAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "codes": lambda n : setattr(self, 'codes', n.get_collection_of_object_values(CodeAnswer)),
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
        writer.write_collection_of_object_values("codes", self.codes)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class CautionAnswer(AdditionalDataHolder, Parsable):
    """
    Something that can hurt a person.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Stable code. Known today: `manual-first`, `unexpected-start`, `rotating-parts`, `stored-pressure`, `product-dust`, `tank-entry`, `heavy-container`, `moving-machine`, `jacked-machine`, `local-guidance-first`, `limit-is-no-promise`, `spread-to-be-measured`, `soil-test-first`, `seed-row-has-its-own-limit`, `not-all-products-mix`, `treated-seed`.
    code: Optional[str] = None
    # A sentence that should be shown as it is.
    detail: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CautionAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CautionAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CautionAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
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
        writer.write_str_value("detail", self.detail)
        writer.write_additional_data_value(self.additional_data)
    


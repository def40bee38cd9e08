from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class FactorAnswer(AdditionalDataHolder, Parsable):
    """
    An exact ratio of two whole numbers, both below 2^53.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Below the line.
    denominator: Optional[int] = None
    # Above the line.
    numerator: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FactorAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FactorAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FactorAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "denominator": lambda n : setattr(self, 'denominator', n.get_int_value()),
            "numerator": lambda n : setattr(self, 'numerator', n.get_int_value()),
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
        writer.write_int_value("denominator", self.denominator)
        writer.write_int_value("numerator", self.numerator)
        writer.write_additional_data_value(self.additional_data)
    


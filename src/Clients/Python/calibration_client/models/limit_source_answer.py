from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class LimitSourceAnswer(AdditionalDataHolder, Parsable):
    """
    A publication that states limits.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Where it was read.
    address: Optional[str] = None
    # Its key; `stated` for a limit of the question.
    key: Optional[str] = None
    # Who publishes it.
    publisher: Optional[str] = None
    # The place that it is for.
    region: Optional[str] = None
    # Its title or subject.
    title: Optional[str] = None
    # Year of the edition; absent when the copy that was read shows none.
    year: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LimitSourceAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LimitSourceAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LimitSourceAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "address": lambda n : setattr(self, 'address', n.get_str_value()),
            "key": lambda n : setattr(self, 'key', n.get_str_value()),
            "publisher": lambda n : setattr(self, 'publisher', n.get_str_value()),
            "region": lambda n : setattr(self, 'region', n.get_str_value()),
            "title": lambda n : setattr(self, 'title', n.get_str_value()),
            "year": lambda n : setattr(self, 'year', n.get_int_value()),
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
        writer.write_str_value("address", self.address)
        writer.write_str_value("key", self.key)
        writer.write_str_value("publisher", self.publisher)
        writer.write_str_value("region", self.region)
        writer.write_str_value("title", self.title)
        writer.write_int_value("year", self.year)
        writer.write_additional_data_value(self.additional_data)
    


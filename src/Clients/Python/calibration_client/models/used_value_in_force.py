from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .reference_of_test import ReferenceOfTest

@dataclass
class UsedValueInForce(AdditionalDataHolder, Parsable):
    """
    A value in force that was used.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Id of the adoption.
    adoption: Optional[str] = None
    # Since when it is in force.
    since: Optional[datetime.datetime] = None
    # The value.
    value: Optional[ReferenceOfTest] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> UsedValueInForce:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: UsedValueInForce
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return UsedValueInForce()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .reference_of_test import ReferenceOfTest

        from .reference_of_test import ReferenceOfTest

        fields: dict[str, Callable[[Any], None]] = {
            "adoption": lambda n : setattr(self, 'adoption', n.get_str_value()),
            "since": lambda n : setattr(self, 'since', n.get_datetime_value()),
            "value": lambda n : setattr(self, 'value', n.get_object_value(ReferenceOfTest)),
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
        writer.write_str_value("adoption", self.adoption)
        writer.write_datetime_value("since", self.since)
        writer.write_object_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .time_quantity import TimeQuantity

@dataclass
class StopAnswer(AdditionalDataHolder, Parsable):
    """
    The stop of one meter.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Number of the group, from 1; stops closer than ten seconds have the same.
    group: Optional[int] = None
    # The meter.
    meter: Optional[str] = None
    # Time from the common start.
    time: Optional[TimeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StopAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StopAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StopAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .time_quantity import TimeQuantity

        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "group": lambda n : setattr(self, 'group', n.get_int_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "time": lambda n : setattr(self, 'time', n.get_object_value(TimeQuantity)),
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
        writer.write_int_value("group", self.group)
        writer.write_str_value("meter", self.meter)
        writer.write_object_value("time", self.time)
        writer.write_additional_data_value(self.additional_data)
    


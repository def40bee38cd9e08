from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class ShareRange(Parsable):
    """
    Two shares, the lower one first.
    """
    # The higher one. Range: above 0 and up to 100 %.
    highest: Optional[RatioQuantity] = None
    # The lower one. Range: above 0 and up to 100 %.
    lowest: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ShareRange:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ShareRange
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ShareRange()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "highest": lambda n : setattr(self, 'highest', n.get_object_value(RatioQuantity)),
            "lowest": lambda n : setattr(self, 'lowest', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("highest", self.highest)
        writer.write_object_value("lowest", self.lowest)
    


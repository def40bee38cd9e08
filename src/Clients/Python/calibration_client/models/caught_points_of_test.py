from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class CaughtPointsOfTest(Parsable):
    """
    A partial catch.
    """
    # Points that were caught.
    caught: Optional[int] = None
    # Standard deviation between points, relative. Default 2.887 %: published limit of 5 % for each outlet (University of Georgia Extension; Field and Solie 2007), taken as rectangular. Range: 0 to 100 %.
    spread: Optional[RatioQuantity] = None
    # Points that the meter feeds.
    total: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CaughtPointsOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CaughtPointsOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CaughtPointsOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "caught": lambda n : setattr(self, 'caught', n.get_int_value()),
            "spread": lambda n : setattr(self, 'spread', n.get_object_value(RatioQuantity)),
            "total": lambda n : setattr(self, 'total', n.get_int_value()),
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
        writer.write_int_value("caught", self.caught)
        writer.write_object_value("spread", self.spread)
        writer.write_int_value("total", self.total)
    


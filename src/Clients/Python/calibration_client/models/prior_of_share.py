from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .prior_of_share_reading import PriorOfShare_reading
    from .ratio_quantity import RatioQuantity

@dataclass
class PriorOfShare(Parsable):
    """
    A share of seeds expected before counting.
    """
    # Its mean. Range: 1 to 99.9 %.
    mean: Optional[RatioQuantity] = None
    # Which share: `survival` (plants per pure seed) or `emergence` (plants per viable seed).
    reading: Optional[PriorOfShare_reading] = None
    # Its standard deviation from field to field and season to season. Range: 0.1 to 50 %.
    spread: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PriorOfShare:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PriorOfShare
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PriorOfShare()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .prior_of_share_reading import PriorOfShare_reading
        from .ratio_quantity import RatioQuantity

        from .prior_of_share_reading import PriorOfShare_reading
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "mean": lambda n : setattr(self, 'mean', n.get_object_value(RatioQuantity)),
            "reading": lambda n : setattr(self, 'reading', n.get_enum_value(PriorOfShare_reading)),
            "spread": lambda n : setattr(self, 'spread', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("mean", self.mean)
        writer.write_enum_value("reading", self.reading)
        writer.write_object_value("spread", self.spread)
    


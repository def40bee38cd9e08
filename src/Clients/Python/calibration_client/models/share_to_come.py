from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .counted_share import CountedShare
    from .ratio_quantity import RatioQuantity

@dataclass
class ShareToCome(Parsable):
    """
    A share of seeds in the season to come: as mean and spread, or as counted in one stand.
    """
    # What a stand count answered as survival or emergence.
    counted: Optional[CountedShare] = None
    # Its mean. Give mean with spread, or counted. No default. Range: 0.1 to 100 %.
    mean: Optional[RatioQuantity] = None
    # Standard deviation of the share from season to season, beside what the count leaves open; goes with counted. Without it the margin is too small. No default. Range: 0 to 50 %.
    season_spread: Optional[RatioQuantity] = None
    # Its standard deviation from field to field and season to season; goes with mean. No default. Range: 0 to 50 %.
    spread: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ShareToCome:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ShareToCome
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ShareToCome()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .counted_share import CountedShare
        from .ratio_quantity import RatioQuantity

        from .counted_share import CountedShare
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "counted": lambda n : setattr(self, 'counted', n.get_object_value(CountedShare)),
            "mean": lambda n : setattr(self, 'mean', n.get_object_value(RatioQuantity)),
            "seasonSpread": lambda n : setattr(self, 'season_spread', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("counted", self.counted)
        writer.write_object_value("mean", self.mean)
        writer.write_object_value("seasonSpread", self.season_spread)
        writer.write_object_value("spread", self.spread)
    


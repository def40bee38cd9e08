from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class CountedShare(Parsable):
    """
    A share of the seeds that was counted in a stand.
    """
    # Coverage probability of the interval.
    coverage_probability: Optional[float] = None
    # The estimate. Range: 0.1 to 100 %.
    estimate: Optional[RatioQuantity] = None
    # Lower end of its interval. Range: 0 to 1000 %.
    lower: Optional[RatioQuantity] = None
    # Upper end of its interval. Range: 0 to 1000 %.
    upper: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CountedShare:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CountedShare
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CountedShare()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "estimate": lambda n : setattr(self, 'estimate', n.get_object_value(RatioQuantity)),
            "lower": lambda n : setattr(self, 'lower', n.get_object_value(RatioQuantity)),
            "upper": lambda n : setattr(self, 'upper', n.get_object_value(RatioQuantity)),
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
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("estimate", self.estimate)
        writer.write_object_value("lower", self.lower)
        writer.write_object_value("upper", self.upper)
    


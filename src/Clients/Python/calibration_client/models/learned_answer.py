from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class LearnedAnswer(AdditionalDataHolder, Parsable):
    """
    A share learned from the counts and from what was expected before them.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Lower end of its interval.
    lower: Optional[RatioQuantity] = None
    # Its mean; the next prior, with the standard deviation below and what seasons add to it.
    mean: Optional[RatioQuantity] = None
    # Which share: `survival` or `emergence`.
    reading: Optional[str] = None
    # Its standard deviation.
    standard_deviation: Optional[RatioQuantity] = None
    # Upper end of its interval.
    upper: Optional[RatioQuantity] = None
    # How much of it the counts carried, as seeds looked at; the prior carried the rest.
    weight_of_counts: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LearnedAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LearnedAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LearnedAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "lower": lambda n : setattr(self, 'lower', n.get_object_value(RatioQuantity)),
            "mean": lambda n : setattr(self, 'mean', n.get_object_value(RatioQuantity)),
            "reading": lambda n : setattr(self, 'reading', n.get_str_value()),
            "standardDeviation": lambda n : setattr(self, 'standard_deviation', n.get_object_value(RatioQuantity)),
            "upper": lambda n : setattr(self, 'upper', n.get_object_value(RatioQuantity)),
            "weightOfCounts": lambda n : setattr(self, 'weight_of_counts', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("lower", self.lower)
        writer.write_object_value("mean", self.mean)
        writer.write_str_value("reading", self.reading)
        writer.write_object_value("standardDeviation", self.standard_deviation)
        writer.write_object_value("upper", self.upper)
        writer.write_object_value("weightOfCounts", self.weight_of_counts)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .expected_ratio import ExpectedRatio
    from .ratio_quantity import RatioQuantity

@dataclass
class CheckedAnswer(AdditionalDataHolder, Parsable):
    """
    A value beside the expected one.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How many standard deviations it is away, on a logarithmic scale: above zero more than expected, below zero less. Absent when no spread was left to measure with.
    deviations: Optional[float] = None
    # The fill efficiency that the value implies.
    fill_efficiency: Optional[ExpectedRatio] = None
    # The value divided by the expected one.
    ratio: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CheckedAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CheckedAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CheckedAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .expected_ratio import ExpectedRatio
        from .ratio_quantity import RatioQuantity

        from .expected_ratio import ExpectedRatio
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "deviations": lambda n : setattr(self, 'deviations', n.get_float_value()),
            "fillEfficiency": lambda n : setattr(self, 'fill_efficiency', n.get_object_value(ExpectedRatio)),
            "ratio": lambda n : setattr(self, 'ratio', n.get_object_value(RatioQuantity)),
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
        writer.write_float_value("deviations", self.deviations)
        writer.write_object_value("fillEfficiency", self.fill_efficiency)
        writer.write_object_value("ratio", self.ratio)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .measured_ratio import MeasuredRatio

@dataclass
class RateAcceptanceAnswer(AdditionalDataHolder, Parsable):
    """
    A rate against its target.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Rate over target, less 1, with its interval: positive when too much.
    deviation: Optional[MeasuredRatio] = None
    # Probability that the true rate is.
    probability_within_tolerance: Optional[float] = None
    # The rate found is within the tolerance of the target.
    within_tolerance: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RateAcceptanceAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RateAcceptanceAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RateAcceptanceAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .measured_ratio import MeasuredRatio

        from .measured_ratio import MeasuredRatio

        fields: dict[str, Callable[[Any], None]] = {
            "deviation": lambda n : setattr(self, 'deviation', n.get_object_value(MeasuredRatio)),
            "probabilityWithinTolerance": lambda n : setattr(self, 'probability_within_tolerance', n.get_float_value()),
            "withinTolerance": lambda n : setattr(self, 'within_tolerance', n.get_bool_value()),
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
        writer.write_object_value("deviation", self.deviation)
        writer.write_float_value("probabilityWithinTolerance", self.probability_within_tolerance)
        writer.write_bool_value("withinTolerance", self.within_tolerance)
        writer.write_additional_data_value(self.additional_data)
    


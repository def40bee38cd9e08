from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class RunAgreementAnswer(AdditionalDataHolder, Parsable):
    """
    How runs agree.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # No test speaks against the runs; all tests together err in 5 of 100 honest cases.
    agree: Optional[bool] = None
    # Counts per distance there over those back, less 1; absent unless both ways were driven.
    direction_difference: Optional[RatioQuantity] = None
    # Sum of squared deviations over the variances expected of them.
    q: Optional[float] = None
    # How often chance alone gives at least this Q.
    q_probability: Optional[float] = None
    # Standard deviation of the runs, relative; zero for one run.
    spread: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RunAgreementAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RunAgreementAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RunAgreementAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "agree": lambda n : setattr(self, 'agree', n.get_bool_value()),
            "directionDifference": lambda n : setattr(self, 'direction_difference', n.get_object_value(RatioQuantity)),
            "q": lambda n : setattr(self, 'q', n.get_float_value()),
            "qProbability": lambda n : setattr(self, 'q_probability', n.get_float_value()),
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
        writer.write_bool_value("agree", self.agree)
        writer.write_object_value("directionDifference", self.direction_difference)
        writer.write_float_value("q", self.q)
        writer.write_float_value("qProbability", self.q_probability)
        writer.write_object_value("spread", self.spread)
        writer.write_additional_data_value(self.additional_data)
    


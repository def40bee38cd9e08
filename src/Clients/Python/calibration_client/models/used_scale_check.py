from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class UsedScaleCheck(AdditionalDataHolder, Parsable):
    """
    A scale check that was used.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Id of the check.
    check: Optional[str] = None
    # The span error that was corrected.
    error: Optional[RatioQuantity] = None
    # When it was made.
    occurred_at: Optional[datetime.datetime] = None
    # Its standard uncertainty.
    standard_uncertainty: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> UsedScaleCheck:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: UsedScaleCheck
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return UsedScaleCheck()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "check": lambda n : setattr(self, 'check', n.get_str_value()),
            "error": lambda n : setattr(self, 'error', n.get_object_value(RatioQuantity)),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "standardUncertainty": lambda n : setattr(self, 'standard_uncertainty', n.get_object_value(RatioQuantity)),
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
        writer.write_str_value("check", self.check)
        writer.write_object_value("error", self.error)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_object_value("standardUncertainty", self.standard_uncertainty)
        writer.write_additional_data_value(self.additional_data)
    


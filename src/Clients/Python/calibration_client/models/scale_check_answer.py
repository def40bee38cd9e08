from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .scale_check_request import ScaleCheckRequest
    from .supersedes import Supersedes

@dataclass
class ScaleCheckAnswer(AdditionalDataHolder, Parsable):
    """
    A stored check of a scale.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The request exactly as entered.
    entered: Optional[ScaleCheckRequest] = None
    # Span error: indicated minus true over true. Later tests on this scale are corrected for it.
    error: Optional[RatioQuantity] = None
    # The outcome in one sentence that can be shown as it is.
    headline: Optional[str] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # The deviation that comes nearest to its limit or exceeds it most.
    largest_deviation: Optional[MassQuantity] = None
    # The limit at that load.
    limit: Optional[MassQuantity] = None
    # Where the limit comes from.
    limit_origin: Optional[str] = None
    # When it was made, with the offset it was entered with.
    occurred_at: Optional[datetime.datetime] = None
    # Every reading is inside the limit of the scale.
    passed: Optional[bool] = None
    # When the service received it.
    received_at: Optional[datetime.datetime] = None
    # Standard uncertainty of that error.
    standard_uncertainty: Optional[RatioQuantity] = None
    # The record that took its place, with the reason; absent while it stands.
    superseded_by: Optional[Supersedes] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleCheckAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleCheckAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleCheckAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .scale_check_request import ScaleCheckRequest
        from .supersedes import Supersedes

        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .scale_check_request import ScaleCheckRequest
        from .supersedes import Supersedes

        fields: dict[str, Callable[[Any], None]] = {
            "entered": lambda n : setattr(self, 'entered', n.get_object_value(ScaleCheckRequest)),
            "error": lambda n : setattr(self, 'error', n.get_object_value(RatioQuantity)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "largestDeviation": lambda n : setattr(self, 'largest_deviation', n.get_object_value(MassQuantity)),
            "limit": lambda n : setattr(self, 'limit', n.get_object_value(MassQuantity)),
            "limitOrigin": lambda n : setattr(self, 'limit_origin', n.get_str_value()),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "passed": lambda n : setattr(self, 'passed', n.get_bool_value()),
            "receivedAt": lambda n : setattr(self, 'received_at', n.get_datetime_value()),
            "standardUncertainty": lambda n : setattr(self, 'standard_uncertainty', n.get_object_value(RatioQuantity)),
            "supersededBy": lambda n : setattr(self, 'superseded_by', n.get_object_value(Supersedes)),
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
        writer.write_object_value("entered", self.entered)
        writer.write_object_value("error", self.error)
        writer.write_str_value("headline", self.headline)
        writer.write_str_value("id", self.id)
        writer.write_object_value("largestDeviation", self.largest_deviation)
        writer.write_object_value("limit", self.limit)
        writer.write_str_value("limitOrigin", self.limit_origin)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_bool_value("passed", self.passed)
        writer.write_datetime_value("receivedAt", self.received_at)
        writer.write_object_value("standardUncertainty", self.standard_uncertainty)
        writer.write_object_value("supersededBy", self.superseded_by)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .limit_source_answer import LimitSourceAnswer
    from .ratio_quantity import RatioQuantity

@dataclass
class StatedReductionAnswer(AdditionalDataHolder, Parsable):
    """
    A reduction that a source states for its own limits.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # It was applied to a limit of this answer. Where the limits of that source are not held, nothing could be.
    applied: Optional[bool] = None
    # What the source says.
    detail: Optional[str] = None
    # Share of the limit that is left; absent when it depends on the case.
    left: Optional[RatioQuantity] = None
    # The publication.
    source: Optional[LimitSourceAnswer] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StatedReductionAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StatedReductionAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StatedReductionAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .limit_source_answer import LimitSourceAnswer
        from .ratio_quantity import RatioQuantity

        from .limit_source_answer import LimitSourceAnswer
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "applied": lambda n : setattr(self, 'applied', n.get_bool_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "left": lambda n : setattr(self, 'left', n.get_object_value(RatioQuantity)),
            "source": lambda n : setattr(self, 'source', n.get_object_value(LimitSourceAnswer)),
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
        writer.write_bool_value("applied", self.applied)
        writer.write_str_value("detail", self.detail)
        writer.write_object_value("left", self.left)
        writer.write_object_value("source", self.source)
        writer.write_additional_data_value(self.additional_data)
    


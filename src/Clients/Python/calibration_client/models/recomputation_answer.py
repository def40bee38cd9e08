from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .difference_answer import DifferenceAnswer

@dataclass
class RecomputationAnswer(AdditionalDataHolder, Parsable):
    """
    Whether a stored test, evaluated again, gives what it gave.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What differs; empty when equal.
    differences: Optional[list[DifferenceAnswer]] = None
    # Version of the engine now.
    engine_version_now: Optional[str] = None
    # Version of the engine that evaluated it first.
    engine_version_then: Optional[str] = None
    # Every value is the same.
    equal: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RecomputationAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RecomputationAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RecomputationAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .difference_answer import DifferenceAnswer

        from .difference_answer import DifferenceAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "differences": lambda n : setattr(self, 'differences', n.get_collection_of_object_values(DifferenceAnswer)),
            "engineVersionNow": lambda n : setattr(self, 'engine_version_now', n.get_str_value()),
            "engineVersionThen": lambda n : setattr(self, 'engine_version_then', n.get_str_value()),
            "equal": lambda n : setattr(self, 'equal', n.get_bool_value()),
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
        writer.write_collection_of_object_values("differences", self.differences)
        writer.write_str_value("engineVersionNow", self.engine_version_now)
        writer.write_str_value("engineVersionThen", self.engine_version_then)
        writer.write_bool_value("equal", self.equal)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class UsedRepeatability(AdditionalDataHolder, Parsable):
    """
    Repeatability from history.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Catches that it comes from.
    catches: Optional[int] = None
    # Its degrees of freedom, at most 15.
    degrees_of_freedom: Optional[float] = None
    # Tests that it comes from.
    tests: Optional[int] = None
    # Standard deviation of one catch, relative.
    value: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> UsedRepeatability:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: UsedRepeatability
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return UsedRepeatability()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "catches": lambda n : setattr(self, 'catches', n.get_int_value()),
            "degreesOfFreedom": lambda n : setattr(self, 'degrees_of_freedom', n.get_float_value()),
            "tests": lambda n : setattr(self, 'tests', n.get_int_value()),
            "value": lambda n : setattr(self, 'value', n.get_object_value(RatioQuantity)),
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
        writer.write_int_value("catches", self.catches)
        writer.write_float_value("degreesOfFreedom", self.degrees_of_freedom)
        writer.write_int_value("tests", self.tests)
        writer.write_object_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


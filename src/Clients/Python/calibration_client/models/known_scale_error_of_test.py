from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class KnownScaleErrorOfTest(Parsable):
    """
    The span error of a scale.
    """
    # Indicated minus true, divided by true: positive when the scale shows too much. Range: -20 to 20 %.
    error: Optional[RatioQuantity] = None
    # Standard uncertainty of that error, relative. Range: 0 to 20 %.
    standard_uncertainty: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> KnownScaleErrorOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: KnownScaleErrorOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return KnownScaleErrorOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "error": lambda n : setattr(self, 'error', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("error", self.error)
        writer.write_object_value("standardUncertainty", self.standard_uncertainty)
    


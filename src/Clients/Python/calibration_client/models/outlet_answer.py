from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class OutletAnswer(AdditionalDataHolder, Parsable):
    """
    One outlet over all tests.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Net mass caught.
    caught: Optional[MassQuantity] = None
    # Deviation from the mean of the outlets.
    deviation: Optional[RatioQuantity] = None
    # The deviation is within the tolerance.
    within_tolerance: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> OutletAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: OutletAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return OutletAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity

        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "caught": lambda n : setattr(self, 'caught', n.get_object_value(MassQuantity)),
            "deviation": lambda n : setattr(self, 'deviation', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("caught", self.caught)
        writer.write_object_value("deviation", self.deviation)
        writer.write_bool_value("withinTolerance", self.within_tolerance)
        writer.write_additional_data_value(self.additional_data)
    


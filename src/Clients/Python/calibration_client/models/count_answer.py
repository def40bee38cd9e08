from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .count_per_area_quantity import CountPerAreaQuantity

@dataclass
class CountAnswer(AdditionalDataHolder, Parsable):
    """
    One count.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Ground counted.
    area: Optional[AreaQuantity] = None
    # Plants counted.
    plants: Optional[int] = None
    # Plants per area of this spot.
    stand: Optional[CountPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CountAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CountAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CountAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity

        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "plants": lambda n : setattr(self, 'plants', n.get_int_value()),
            "stand": lambda n : setattr(self, 'stand', n.get_object_value(CountPerAreaQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_int_value("plants", self.plants)
        writer.write_object_value("stand", self.stand)
        writer.write_additional_data_value(self.additional_data)
    


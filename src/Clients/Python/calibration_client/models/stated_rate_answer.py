from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class StatedRateAnswer(AdditionalDataHolder, Parsable):
    """
    A rate from elsewhere beside the one computed here.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How much it is above the rate of this answer; negative when below.
    difference: Optional[RatioQuantity] = None
    # It comes from dividing by 10: you said so, or it is in lb/ac, nobody said how it was made, and it is 4.13 % high.
    from_divide_by_ten: Optional[bool] = None
    # Plants that it brings up; absent when the establishment is unknown.
    plants: Optional[CountPerAreaQuantity] = None
    # The rate stated.
    rate: Optional[MassPerAreaQuantity] = None
    # Pure seeds per area that it puts down.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StatedRateAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StatedRateAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StatedRateAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity

        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "difference": lambda n : setattr(self, 'difference', n.get_object_value(RatioQuantity)),
            "fromDivideByTen": lambda n : setattr(self, 'from_divide_by_ten', n.get_bool_value()),
            "plants": lambda n : setattr(self, 'plants', n.get_object_value(CountPerAreaQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
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
        writer.write_object_value("difference", self.difference)
        writer.write_bool_value("fromDivideByTen", self.from_divide_by_ten)
        writer.write_object_value("plants", self.plants)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_additional_data_value(self.additional_data)
    


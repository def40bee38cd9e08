from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .cost_per_unit import CostPerUnit
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .money import Money
    from .ratio_quantity import RatioQuantity

@dataclass
class MarginAnswer(AdditionalDataHolder, Parsable):
    """
    The margin of a rate over the one at the mean.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What the extra seed costs on one unit of area; absent without price and kernel mass.
    cost: Optional[CostPerUnit] = None
    # Extra mass per area; absent without a kernel mass.
    rate: Optional[MassPerAreaQuantity] = None
    # The margin over the rate at the mean.
    relative: Optional[RatioQuantity] = None
    # Extra seeds per area.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # What the extra seed costs on the whole area; absent without it.
    total_cost: Optional[Money] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MarginAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MarginAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MarginAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .cost_per_unit import CostPerUnit
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .money import Money
        from .ratio_quantity import RatioQuantity

        from .cost_per_unit import CostPerUnit
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .money import Money
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "cost": lambda n : setattr(self, 'cost', n.get_object_value(CostPerUnit)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "relative": lambda n : setattr(self, 'relative', n.get_object_value(RatioQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "totalCost": lambda n : setattr(self, 'total_cost', n.get_object_value(Money)),
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
        writer.write_object_value("cost", self.cost)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("relative", self.relative)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("totalCost", self.total_cost)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_quantity import MassQuantity
    from .measured_ratio import MeasuredRatio
    from .money import Money
    from .ratio_quantity import RatioQuantity

@dataclass
class EffectOfLot(AdditionalDataHolder, Parsable):
    """
    What is sown when something stays as it was.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The rate that falls.
    applied_rate: Optional[MassPerAreaQuantity] = None
    # Cost of it; absent without an area and a price.
    cost: Optional[Money] = None
    # Seed too much over the area, negative when too little; absent without an area.
    mass_over_area: Optional[MassQuantity] = None
    # Plants per area; absent without emergence and the germination of the new lot.
    plants: Optional[CountPerAreaQuantity] = None
    # How much more plants than before; absent unless both germinations are known.
    plants_deviation: Optional[RatioQuantity] = None
    # How much that is above the rate for the same seeds, or above the set rate where that is unknown; negative when below. The interval is that of the predicted mass per revolution.
    rate_deviation: Optional[MeasuredRatio] = None
    # How much more seeds than before; negative for fewer.
    seeds_deviation: Optional[RatioQuantity] = None
    # Pure seeds per area; absent without kernel masses.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # The rate that the controller is told.
    set_rate: Optional[MassPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> EffectOfLot:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: EffectOfLot
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return EffectOfLot()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .measured_ratio import MeasuredRatio
        from .money import Money
        from .ratio_quantity import RatioQuantity

        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .measured_ratio import MeasuredRatio
        from .money import Money
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "appliedRate": lambda n : setattr(self, 'applied_rate', n.get_object_value(MassPerAreaQuantity)),
            "cost": lambda n : setattr(self, 'cost', n.get_object_value(Money)),
            "massOverArea": lambda n : setattr(self, 'mass_over_area', n.get_object_value(MassQuantity)),
            "plants": lambda n : setattr(self, 'plants', n.get_object_value(CountPerAreaQuantity)),
            "plantsDeviation": lambda n : setattr(self, 'plants_deviation', n.get_object_value(RatioQuantity)),
            "rateDeviation": lambda n : setattr(self, 'rate_deviation', n.get_object_value(MeasuredRatio)),
            "seedsDeviation": lambda n : setattr(self, 'seeds_deviation', n.get_object_value(RatioQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "setRate": lambda n : setattr(self, 'set_rate', n.get_object_value(MassPerAreaQuantity)),
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
        writer.write_object_value("appliedRate", self.applied_rate)
        writer.write_object_value("cost", self.cost)
        writer.write_object_value("massOverArea", self.mass_over_area)
        writer.write_object_value("plants", self.plants)
        writer.write_object_value("plantsDeviation", self.plants_deviation)
        writer.write_object_value("rateDeviation", self.rate_deviation)
        writer.write_object_value("seedsDeviation", self.seeds_deviation)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("setRate", self.set_rate)
        writer.write_additional_data_value(self.additional_data)
    


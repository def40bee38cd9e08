from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_quantity import MassQuantity
    from .measured_ratio import MeasuredRatio
    from .money import Money
    from .ratio_quantity import RatioQuantity

@dataclass
class DistanceEffectAnswer(AdditionalDataHolder, Parsable):
    """
    The effect of wrong numbers.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The rate that is really applied; absent without a target rate.
    applied_rate: Optional[MassPerAreaQuantity] = None
    # Area counted over area covered: the product of the two. Without a value in force the distance counts as right.
    area_counted: Optional[RatioQuantity] = None
    # Money for that product; negative when the crop gets too little.
    cost: Optional[Money] = None
    # Distance counted over distance driven; absent without a value in force.
    distance_counted: Optional[RatioQuantity] = None
    # Product too much over the stated area; negative when too little.
    mass_over_area: Optional[MassQuantity] = None
    # Rate applied over rate set, less 1, with the interval of the runs: positive when the field gets too much.
    rate_change: Optional[MeasuredRatio] = None
    # Width in the controller over width covered anew; absent without a width.
    width_counted: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DistanceEffectAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DistanceEffectAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DistanceEffectAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .measured_ratio import MeasuredRatio
        from .money import Money
        from .ratio_quantity import RatioQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .measured_ratio import MeasuredRatio
        from .money import Money
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "appliedRate": lambda n : setattr(self, 'applied_rate', n.get_object_value(MassPerAreaQuantity)),
            "areaCounted": lambda n : setattr(self, 'area_counted', n.get_object_value(RatioQuantity)),
            "cost": lambda n : setattr(self, 'cost', n.get_object_value(Money)),
            "distanceCounted": lambda n : setattr(self, 'distance_counted', n.get_object_value(RatioQuantity)),
            "massOverArea": lambda n : setattr(self, 'mass_over_area', n.get_object_value(MassQuantity)),
            "rateChange": lambda n : setattr(self, 'rate_change', n.get_object_value(MeasuredRatio)),
            "widthCounted": lambda n : setattr(self, 'width_counted', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("areaCounted", self.area_counted)
        writer.write_object_value("cost", self.cost)
        writer.write_object_value("distanceCounted", self.distance_counted)
        writer.write_object_value("massOverArea", self.mass_over_area)
        writer.write_object_value("rateChange", self.rate_change)
        writer.write_object_value("widthCounted", self.width_counted)
        writer.write_additional_data_value(self.additional_data)
    


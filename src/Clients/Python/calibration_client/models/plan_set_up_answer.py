from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .caution_answer import CautionAnswer
    from .fan_answer import FanAnswer
    from .meter_set_up_answer import MeterSetUpAnswer
    from .obstacle_of_plan import ObstacleOfPlan
    from .open_point_of_plan import OpenPointOfPlan
    from .product_rate_answer import ProductRateAnswer
    from .seed_row_limit_answer import SeedRowLimitAnswer

@dataclass
class PlanSetUpAnswer(AdditionalDataHolder, Parsable):
    """
    Rates and set-up of a field: every calculation that the plan and its records allow, each as its own operation would answer it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What can hurt people or the crop.
    cautions: Optional[list[CautionAnswer]] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # Where the fan may stand for all products, and what the air carries; absent when no product states its fan speeds. Compared with the fan speed of the sowing conditions.
    fan: Optional[FanAnswer] = None
    # The outcome in a few sentences that can be shown as they are.
    headline: Optional[str] = None
    # What stands against going on, in the order of harm; empty when nothing is. What is not known yet is under open.
    in_the_way: Optional[list[ObstacleOfPlan]] = None
    # The meters, in the order of the plan.
    meters: Optional[list[MeterSetUpAnswer]] = None
    # True when every meter has a rate and a mass per revolution, its element serves that rate at the planned ground speeds, all that lies with the seed has a limit and is within it, the fan suits all products, the nutrients are met, no lot asks for a test first, and nothing is open.
    nothing_in_the_way: Optional[bool] = None
    # How the products supply the nutrients that are wanted; absent when the plan wants none, or a rate or an analysis is open. Where several meters share a product, its line is for all of them together, on the whole field.
    nutrients: Optional[ProductRateAnswer] = None
    # What could not be computed, and what to add.
    open: Optional[list[OpenPointOfPlan]] = None
    # What lies with the seed against published limits; absent when nothing is placed with the seed, or something that it needs is open.
    seed_row: Optional[SeedRowLimitAnswer] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PlanSetUpAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PlanSetUpAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PlanSetUpAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .caution_answer import CautionAnswer
        from .fan_answer import FanAnswer
        from .meter_set_up_answer import MeterSetUpAnswer
        from .obstacle_of_plan import ObstacleOfPlan
        from .open_point_of_plan import OpenPointOfPlan
        from .product_rate_answer import ProductRateAnswer
        from .seed_row_limit_answer import SeedRowLimitAnswer

        from .caution_answer import CautionAnswer
        from .fan_answer import FanAnswer
        from .meter_set_up_answer import MeterSetUpAnswer
        from .obstacle_of_plan import ObstacleOfPlan
        from .open_point_of_plan import OpenPointOfPlan
        from .product_rate_answer import ProductRateAnswer
        from .seed_row_limit_answer import SeedRowLimitAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "fan": lambda n : setattr(self, 'fan', n.get_object_value(FanAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "inTheWay": lambda n : setattr(self, 'in_the_way', n.get_collection_of_object_values(ObstacleOfPlan)),
            "meters": lambda n : setattr(self, 'meters', n.get_collection_of_object_values(MeterSetUpAnswer)),
            "nothingInTheWay": lambda n : setattr(self, 'nothing_in_the_way', n.get_bool_value()),
            "nutrients": lambda n : setattr(self, 'nutrients', n.get_object_value(ProductRateAnswer)),
            "open": lambda n : setattr(self, 'open', n.get_collection_of_object_values(OpenPointOfPlan)),
            "seedRow": lambda n : setattr(self, 'seed_row', n.get_object_value(SeedRowLimitAnswer)),
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
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("fan", self.fan)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("inTheWay", self.in_the_way)
        writer.write_collection_of_object_values("meters", self.meters)
        writer.write_bool_value("nothingInTheWay", self.nothing_in_the_way)
        writer.write_object_value("nutrients", self.nutrients)
        writer.write_collection_of_object_values("open", self.open)
        writer.write_object_value("seedRow", self.seed_row)
        writer.write_additional_data_value(self.additional_data)
    


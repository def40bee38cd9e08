from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .mass_per_time_quantity import MassPerTimeQuantity
    from .product_load_answer import ProductLoadAnswer
    from .speed_quantity import SpeedQuantity

@dataclass
class AirLoadAnswer(AdditionalDataHolder, Parsable):
    """
    What the air carries at one ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # Mass flow of all products together.
    mass_flow: Optional[MassPerTimeQuantity] = None
    # Mass of all products in a volume of air; absent without a planned air flow.
    mass_per_air: Optional[BulkDensityQuantity] = None
    # Each product.
    products: Optional[list[ProductLoadAnswer]] = None
    # Which of its rates each product has: the `lowest` above zero or the `highest`.
    rates: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AirLoadAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AirLoadAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AirLoadAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_per_time_quantity import MassPerTimeQuantity
        from .product_load_answer import ProductLoadAnswer
        from .speed_quantity import SpeedQuantity

        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_per_time_quantity import MassPerTimeQuantity
        from .product_load_answer import ProductLoadAnswer
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "massFlow": lambda n : setattr(self, 'mass_flow', n.get_object_value(MassPerTimeQuantity)),
            "massPerAir": lambda n : setattr(self, 'mass_per_air', n.get_object_value(BulkDensityQuantity)),
            "products": lambda n : setattr(self, 'products', n.get_collection_of_object_values(ProductLoadAnswer)),
            "rates": lambda n : setattr(self, 'rates', n.get_str_value()),
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
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("massFlow", self.mass_flow)
        writer.write_object_value("massPerAir", self.mass_per_air)
        writer.write_collection_of_object_values("products", self.products)
        writer.write_str_value("rates", self.rates)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .product_in_air import ProductInAir
    from .rotation_quantity import RotationQuantity
    from .volume_per_time_quantity import VolumePerTimeQuantity

@dataclass
class FanOfMachine(Parsable):
    """
    One fan with the products that its air carries. All limits are yours, from the manual of the machine: the service knows no fan.
    """
    # Planned air flow; gives the product in each cubic metre of air. No default. Range: above 0 and up to 1000000 m3/h.
    air_flow: Optional[VolumePerTimeQuantity] = None
    # Planned fan speed. No default. Range: above 0 and up to 10000 rpm.
    fan_speed: Optional[RotationQuantity] = None
    # The products that share the air.
    products: Optional[list[ProductInAir]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FanOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FanOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FanOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .product_in_air import ProductInAir
        from .rotation_quantity import RotationQuantity
        from .volume_per_time_quantity import VolumePerTimeQuantity

        from .product_in_air import ProductInAir
        from .rotation_quantity import RotationQuantity
        from .volume_per_time_quantity import VolumePerTimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "airFlow": lambda n : setattr(self, 'air_flow', n.get_object_value(VolumePerTimeQuantity)),
            "fanSpeed": lambda n : setattr(self, 'fan_speed', n.get_object_value(RotationQuantity)),
            "products": lambda n : setattr(self, 'products', n.get_collection_of_object_values(ProductInAir)),
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
        writer.write_object_value("airFlow", self.air_flow)
        writer.write_object_value("fanSpeed", self.fan_speed)
        writer.write_collection_of_object_values("products", self.products)
    


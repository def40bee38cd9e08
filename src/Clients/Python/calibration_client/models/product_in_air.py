from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .air_flow_limits import AirFlowLimits
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .rotation_limits import RotationLimits

@dataclass
class ProductInAir(Parsable):
    """
    A product in the air stream.
    """
    # Air flows that this product may have.
    air_flow_limits: Optional[AirFlowLimits] = None
    # Width that its meter covers; that of the question when left out. No default. Range: 0.01 to 200 m.
    covered_width: Optional[LengthQuantity] = None
    # Fan speeds that this product may have.
    fan_speed_limits: Optional[RotationLimits] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Its rates; those of the question when left out. Range: 0 to 100000 kg/ha.
    rates: Optional[list[MassPerAreaQuantity]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductInAir:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductInAir
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductInAir()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .air_flow_limits import AirFlowLimits
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .rotation_limits import RotationLimits

        from .air_flow_limits import AirFlowLimits
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .rotation_limits import RotationLimits

        fields: dict[str, Callable[[Any], None]] = {
            "airFlowLimits": lambda n : setattr(self, 'air_flow_limits', n.get_object_value(AirFlowLimits)),
            "coveredWidth": lambda n : setattr(self, 'covered_width', n.get_object_value(LengthQuantity)),
            "fanSpeedLimits": lambda n : setattr(self, 'fan_speed_limits', n.get_object_value(RotationLimits)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "rates": lambda n : setattr(self, 'rates', n.get_collection_of_object_values(MassPerAreaQuantity)),
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
        writer.write_object_value("airFlowLimits", self.air_flow_limits)
        writer.write_object_value("coveredWidth", self.covered_width)
        writer.write_object_value("fanSpeedLimits", self.fan_speed_limits)
        writer.write_str_value("name", self.name)
        writer.write_collection_of_object_values("rates", self.rates)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .ratio_quantity import RatioQuantity
    from .volume_quantity import VolumeQuantity

@dataclass
class TankOfProduct(Parsable):
    """
    A tank to be filled.
    """
    # Share of it that is filled. Default 100 %: the stated volume of the tank is taken as what it holds; judgement, no published source. Range: 1 to 100 %.
    fill: Optional[RatioQuantity] = None
    # Rate at which its content is put down; gives the area of a fill. No default. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # Its volume, taken as exact. Range: above 0 and up to 1000 m3.
    volume: Optional[VolumeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TankOfProduct:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TankOfProduct
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TankOfProduct()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "fill": lambda n : setattr(self, 'fill', n.get_object_value(RatioQuantity)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "volume": lambda n : setattr(self, 'volume', n.get_object_value(VolumeQuantity)),
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
        writer.write_object_value("fill", self.fill)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_object_value("volume", self.volume)
    


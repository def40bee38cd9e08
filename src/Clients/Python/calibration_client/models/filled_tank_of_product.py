from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .volume_quantity import VolumeQuantity

@dataclass
class FilledTankOfProduct(Parsable):
    """
    A tank that was filled.
    """
    # Mass filled in. Range: above 0 and up to 1000 t.
    mass: Optional[MassQuantity] = None
    # Largest error of the mass. Default 1 %: largest error of the mass filled into a tank; judgement, no published source. Range: 0 to 50 %.
    mass_tolerance: Optional[RatioQuantity] = None
    # Volume that it took. Range: above 0 and up to 1000 m3.
    volume: Optional[VolumeQuantity] = None
    # Largest error of the volume. Default 5 %: largest error of the volume of a tank filled by eye; judgement, no published source. Range: 0 to 50 %.
    volume_tolerance: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FilledTankOfProduct:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FilledTankOfProduct
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FilledTankOfProduct()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
            "massTolerance": lambda n : setattr(self, 'mass_tolerance', n.get_object_value(RatioQuantity)),
            "volume": lambda n : setattr(self, 'volume', n.get_object_value(VolumeQuantity)),
            "volumeTolerance": lambda n : setattr(self, 'volume_tolerance', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("mass", self.mass)
        writer.write_object_value("massTolerance", self.mass_tolerance)
        writer.write_object_value("volume", self.volume)
        writer.write_object_value("volumeTolerance", self.volume_tolerance)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .scale_of_test import ScaleOfTest
    from .volume_quantity import VolumeQuantity
    from .weighing_of_product import WeighingOfProduct

@dataclass
class WeighedVolumeOfProduct(Parsable):
    """
    Weighings of one container, filled anew and struck off level each time.
    """
    # Standard deviation of one filling. Default 2 %: one filling of a container, struck off level; judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    repeatability: Optional[RatioQuantity] = None
    # The scale. Default 0.5 %: largest error of a scale of which nothing is stated, as a share of the load; judgement, no published source.
    scale: Optional[ScaleOfTest] = None
    # Mass of the empty container, read once for all weighings. No default. Range: above 0 and up to 1000 t.
    shared_tare: Optional[MassQuantity] = None
    # Volume of the container. Range: above 0 and up to 1000 m3.
    volume: Optional[VolumeQuantity] = None
    # Largest error of that volume. Default 2 %: largest error of the volume of a bucket or box; judgement, no published source. Range: 0 to 50 %.
    volume_tolerance: Optional[RatioQuantity] = None
    # The weighings.
    weighings: Optional[list[WeighingOfProduct]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WeighedVolumeOfProduct:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WeighedVolumeOfProduct
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WeighedVolumeOfProduct()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .scale_of_test import ScaleOfTest
        from .volume_quantity import VolumeQuantity
        from .weighing_of_product import WeighingOfProduct

        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .scale_of_test import ScaleOfTest
        from .volume_quantity import VolumeQuantity
        from .weighing_of_product import WeighingOfProduct

        fields: dict[str, Callable[[Any], None]] = {
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(RatioQuantity)),
            "scale": lambda n : setattr(self, 'scale', n.get_object_value(ScaleOfTest)),
            "sharedTare": lambda n : setattr(self, 'shared_tare', n.get_object_value(MassQuantity)),
            "volume": lambda n : setattr(self, 'volume', n.get_object_value(VolumeQuantity)),
            "volumeTolerance": lambda n : setattr(self, 'volume_tolerance', n.get_object_value(RatioQuantity)),
            "weighings": lambda n : setattr(self, 'weighings', n.get_collection_of_object_values(WeighingOfProduct)),
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
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_object_value("scale", self.scale)
        writer.write_object_value("sharedTare", self.shared_tare)
        writer.write_object_value("volume", self.volume)
        writer.write_object_value("volumeTolerance", self.volume_tolerance)
        writer.write_collection_of_object_values("weighings", self.weighings)
    


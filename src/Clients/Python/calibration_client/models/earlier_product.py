from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .density_of_product import DensityOfProduct
    from .earlier_mass_per_revolution import EarlierMassPerRevolution
    from .ratio_quantity import RatioQuantity

@dataclass
class EarlierProduct(Parsable):
    """
    An earlier product on the same element.
    """
    # Its bulk density. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[DensityOfProduct] = None
    # The mass per revolution that was found with it. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[EarlierMassPerRevolution] = None
    # How much the fill efficiency of one element changes from one product to another. Default 5 %: change of fill efficiency from one product to another on the same element, standard deviation of its logarithm; judgement, no published source. Range: 0 to 100 %.
    spread: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> EarlierProduct:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: EarlierProduct
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return EarlierProduct()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .density_of_product import DensityOfProduct
        from .earlier_mass_per_revolution import EarlierMassPerRevolution
        from .ratio_quantity import RatioQuantity

        from .density_of_product import DensityOfProduct
        from .earlier_mass_per_revolution import EarlierMassPerRevolution
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(DensityOfProduct)),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(EarlierMassPerRevolution)),
            "spread": lambda n : setattr(self, 'spread', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("spread", self.spread)
    


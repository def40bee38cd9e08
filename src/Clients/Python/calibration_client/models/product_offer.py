from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_quantity import MassQuantity
    from .price import Price
    from .share_of_nutrient import ShareOfNutrient

@dataclass
class ProductOffer(Parsable):
    """
    A product that can be applied.
    """
    # Its nutrients, each as a share of its mass in a stated form. A grade such as 11-52-0 states N, P2O5 and K2O in most countries, but the elements N, P and K in some: look on the label.
    analysis: Optional[list[ShareOfNutrient]] = None
    # Its rate is decided already, as for a starter; its nutrients count like credits and its cost is added. Excludes leastRate and mostRate. No default. Range: 0 to 100000 kg/ha.
    fixed_rate: Optional[MassPerAreaQuantity] = None
    # It is applied at no less than this rate. None when left out. No default. Range: 0 to 100000 kg/ha.
    least_rate: Optional[MassPerAreaQuantity] = None
    # It is applied at no more than this rate, for example because of a limit for the seed row or of the meter. No limit when left out. No default. Range: 0 to 100000 kg/ha.
    most_rate: Optional[MassPerAreaQuantity] = None
    # What you call it.
    name: Optional[str] = None
    # Mass of one package; left out for bulk. No default. Range: 0.1 to 100000 kg.
    package_mass: Optional[MassQuantity] = None
    # Price. Default none: without prices the rates are those of least total mass.
    price: Optional[Price] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductOffer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductOffer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductOffer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .price import Price
        from .share_of_nutrient import ShareOfNutrient

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .price import Price
        from .share_of_nutrient import ShareOfNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "analysis": lambda n : setattr(self, 'analysis', n.get_collection_of_object_values(ShareOfNutrient)),
            "fixedRate": lambda n : setattr(self, 'fixed_rate', n.get_object_value(MassPerAreaQuantity)),
            "leastRate": lambda n : setattr(self, 'least_rate', n.get_object_value(MassPerAreaQuantity)),
            "mostRate": lambda n : setattr(self, 'most_rate', n.get_object_value(MassPerAreaQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "packageMass": lambda n : setattr(self, 'package_mass', n.get_object_value(MassQuantity)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
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
        writer.write_collection_of_object_values("analysis", self.analysis)
        writer.write_object_value("fixedRate", self.fixed_rate)
        writer.write_object_value("leastRate", self.least_rate)
        writer.write_object_value("mostRate", self.most_rate)
        writer.write_str_value("name", self.name)
        writer.write_object_value("packageMass", self.package_mass)
        writer.write_object_value("price", self.price)
    


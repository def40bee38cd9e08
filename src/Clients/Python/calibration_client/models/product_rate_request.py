from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .credited_nutrient import CreditedNutrient
    from .product_offer import ProductOffer
    from .wanted_nutrient import WantedNutrient

@dataclass
class ProductRateRequest(Parsable):
    """
    Nutrients that are wanted, and the products that can supply them.
    """
    # Area to be covered; gives totals and packages. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # What is there already and need not be bought: applied earlier, or supplied by the soil. Credits of one nutrient add up.
    credits: Optional[list[CreditedNutrient]] = None
    # The products at hand. Among choices of equal cost and mass, earlier ones are taken before later ones. Either all have a price, in one currency, or none has.
    products: Optional[list[ProductOffer]] = None
    # What is wanted of each nutrient: nitrogen, phosphorus, potassium, sulfur. One target for each nutrient.
    targets: Optional[list[WantedNutrient]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductRateRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductRateRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductRateRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .credited_nutrient import CreditedNutrient
        from .product_offer import ProductOffer
        from .wanted_nutrient import WantedNutrient

        from .area_quantity import AreaQuantity
        from .credited_nutrient import CreditedNutrient
        from .product_offer import ProductOffer
        from .wanted_nutrient import WantedNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "credits": lambda n : setattr(self, 'credits', n.get_collection_of_object_values(CreditedNutrient)),
            "products": lambda n : setattr(self, 'products', n.get_collection_of_object_values(ProductOffer)),
            "targets": lambda n : setattr(self, 'targets', n.get_collection_of_object_values(WantedNutrient)),
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
        writer.write_object_value("area", self.area)
        writer.write_collection_of_object_values("credits", self.credits)
        writer.write_collection_of_object_values("products", self.products)
        writer.write_collection_of_object_values("targets", self.targets)
    


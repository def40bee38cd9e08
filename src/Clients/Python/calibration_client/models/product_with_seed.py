from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .amount_of_nutrient import AmountOfNutrient
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .product_with_seed_nitrogen_form import ProductWithSeed_nitrogenForm
    from .share_of_nutrient import ShareOfNutrient

@dataclass
class ProductWithSeed(Parsable):
    """
    A product placed with the seed: its analysis with rates, or nutrients at rates of their own.
    """
    # Its nutrients, each as a share of its mass in a stated form. Give it with rates.
    analysis: Optional[list[ShareOfNutrient]] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Form of its nitrogen. Coated or treated urea is `urea`: no source has a number for it. Default urea, the form that harms most: judgement.
    nitrogen_form: Optional[ProductWithSeed_nitrogenForm] = None
    # Nutrients per area, the same everywhere. Give them in place of analysis and rates.
    nutrients: Optional[list[AmountOfNutrient]] = None
    # Rates of the product: one that holds everywhere, or one for each zone of a variable rate, in the same order for all products. Zero is allowed. Range: 0 to 100000 kg/ha.
    rates: Optional[list[MassPerAreaQuantity]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductWithSeed:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductWithSeed
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductWithSeed()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .amount_of_nutrient import AmountOfNutrient
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .product_with_seed_nitrogen_form import ProductWithSeed_nitrogenForm
        from .share_of_nutrient import ShareOfNutrient

        from .amount_of_nutrient import AmountOfNutrient
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .product_with_seed_nitrogen_form import ProductWithSeed_nitrogenForm
        from .share_of_nutrient import ShareOfNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "analysis": lambda n : setattr(self, 'analysis', n.get_collection_of_object_values(ShareOfNutrient)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "nitrogenForm": lambda n : setattr(self, 'nitrogen_form', n.get_enum_value(ProductWithSeed_nitrogenForm)),
            "nutrients": lambda n : setattr(self, 'nutrients', n.get_collection_of_object_values(AmountOfNutrient)),
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
        writer.write_collection_of_object_values("analysis", self.analysis)
        writer.write_str_value("name", self.name)
        writer.write_enum_value("nitrogenForm", self.nitrogen_form)
        writer.write_collection_of_object_values("nutrients", self.nutrients)
        writer.write_collection_of_object_values("rates", self.rates)
    


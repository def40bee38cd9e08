from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .cost_of_nutrient import CostOfNutrient
    from .cost_per_unit import CostPerUnit
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_quantity import MassQuantity
    from .money import Money
    from .supplied_nutrient import SuppliedNutrient

@dataclass
class ProductRateLine(AdditionalDataHolder, Parsable):
    """
    One product.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Its cost per area; absent without prices.
    cost_per_area: Optional[CostPerUnit] = None
    # True when the question fixed the rate.
    is_fixed: Optional[bool] = None
    # Its name.
    name: Optional[str] = None
    # Cost of its nutrient per mass, where it holds only one; absent without prices.
    nutrient_cost: Optional[CostOfNutrient] = None
    # Whole packages that hold that mass; absent without an area or for bulk.
    packages: Optional[int] = None
    # Its rate.
    rate: Optional[MassPerAreaQuantity] = None
    # What it brings of each nutrient that it holds.
    supplies: Optional[list[SuppliedNutrient]] = None
    # Cost of that mass, not of whole packages; absent without prices or area.
    total_cost: Optional[Money] = None
    # Its mass over the area; absent without an area.
    total_mass: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductRateLine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductRateLine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductRateLine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .cost_of_nutrient import CostOfNutrient
        from .cost_per_unit import CostPerUnit
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .money import Money
        from .supplied_nutrient import SuppliedNutrient

        from .cost_of_nutrient import CostOfNutrient
        from .cost_per_unit import CostPerUnit
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .money import Money
        from .supplied_nutrient import SuppliedNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "costPerArea": lambda n : setattr(self, 'cost_per_area', n.get_object_value(CostPerUnit)),
            "isFixed": lambda n : setattr(self, 'is_fixed', n.get_bool_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "nutrientCost": lambda n : setattr(self, 'nutrient_cost', n.get_object_value(CostOfNutrient)),
            "packages": lambda n : setattr(self, 'packages', n.get_int_value()),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "supplies": lambda n : setattr(self, 'supplies', n.get_collection_of_object_values(SuppliedNutrient)),
            "totalCost": lambda n : setattr(self, 'total_cost', n.get_object_value(Money)),
            "totalMass": lambda n : setattr(self, 'total_mass', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("costPerArea", self.cost_per_area)
        writer.write_bool_value("isFixed", self.is_fixed)
        writer.write_str_value("name", self.name)
        writer.write_object_value("nutrientCost", self.nutrient_cost)
        writer.write_int_value("packages", self.packages)
        writer.write_object_value("rate", self.rate)
        writer.write_collection_of_object_values("supplies", self.supplies)
        writer.write_object_value("totalCost", self.total_cost)
        writer.write_object_value("totalMass", self.total_mass)
        writer.write_additional_data_value(self.additional_data)
    


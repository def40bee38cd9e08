from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .blend_share import BlendShare
    from .caution_answer import CautionAnswer
    from .cost_per_unit import CostPerUnit
    from .finding_answer import FindingAnswer
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .money import Money
    from .nutrient_line import NutrientLine
    from .product_rate_line import ProductRateLine

@dataclass
class ProductRateAnswer(AdditionalDataHolder, Parsable):
    """
    Rates of products, what they supply and what they cost.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # Analysis of a blend of the products whose rates were computed; empty when none of them is applied.
    blend: Optional[list[BlendShare]] = None
    # What can hurt people or the crop.
    cautions: Optional[list[CautionAnswer]] = None
    # Cost of all products per area; absent without prices.
    cost_per_area: Optional[CostPerUnit] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # True when all targets are met. Otherwise the rates are the nearest that can be had, and a finding says for each target missed what stands against it.
    meets_targets: Optional[bool] = None
    # Each nutrient that a target, a credit or a product names.
    nutrients: Optional[list[NutrientLine]] = None
    # The products, in the order of the question.
    products: Optional[list[ProductRateLine]] = None
    # Cost of all products over the area; absent without prices or area.
    total_cost: Optional[Money] = None
    # Mass of all products together.
    total_rate: Optional[MassPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductRateAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductRateAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductRateAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .blend_share import BlendShare
        from .caution_answer import CautionAnswer
        from .cost_per_unit import CostPerUnit
        from .finding_answer import FindingAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .money import Money
        from .nutrient_line import NutrientLine
        from .product_rate_line import ProductRateLine

        from .assumption_answer import AssumptionAnswer
        from .blend_share import BlendShare
        from .caution_answer import CautionAnswer
        from .cost_per_unit import CostPerUnit
        from .finding_answer import FindingAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .money import Money
        from .nutrient_line import NutrientLine
        from .product_rate_line import ProductRateLine

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "blend": lambda n : setattr(self, 'blend', n.get_collection_of_object_values(BlendShare)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "costPerArea": lambda n : setattr(self, 'cost_per_area', n.get_object_value(CostPerUnit)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "meetsTargets": lambda n : setattr(self, 'meets_targets', n.get_bool_value()),
            "nutrients": lambda n : setattr(self, 'nutrients', n.get_collection_of_object_values(NutrientLine)),
            "products": lambda n : setattr(self, 'products', n.get_collection_of_object_values(ProductRateLine)),
            "totalCost": lambda n : setattr(self, 'total_cost', n.get_object_value(Money)),
            "totalRate": lambda n : setattr(self, 'total_rate', n.get_object_value(MassPerAreaQuantity)),
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
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("blend", self.blend)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_object_value("costPerArea", self.cost_per_area)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_bool_value("meetsTargets", self.meets_targets)
        writer.write_collection_of_object_values("nutrients", self.nutrients)
        writer.write_collection_of_object_values("products", self.products)
        writer.write_object_value("totalCost", self.total_cost)
        writer.write_object_value("totalRate", self.total_rate)
        writer.write_additional_data_value(self.additional_data)
    


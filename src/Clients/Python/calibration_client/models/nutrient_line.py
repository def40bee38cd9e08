from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .cost_per_unit import CostPerUnit
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class NutrientLine(AdditionalDataHolder, Parsable):
    """
    One nutrient: asked for, there already, brought, left over.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What one more mass unit of the target would cost with these products: the price of this nutrient here. Zero where enough is there anyway, below zero where a limit one unit higher would save money. Absent without prices, without a target, or when no more can be had.
    cost_of_next_unit: Optional[CostPerUnit] = None
    # What is there already.
    credits: Optional[MassPerAreaQuantity] = None
    # What the products bring whose rates were computed.
    from_computed_rates: Optional[MassPerAreaQuantity] = None
    # What products of fixed rate bring.
    from_fixed_rates: Optional[MassPerAreaQuantity] = None
    # How the target is meant; absent without one. Known today: `at-least`, `exactly`, `at-most`.
    kind: Optional[str] = None
    # The target is met; true without one.
    met: Optional[bool] = None
    # The nutrient in the form of all amounts beside it: that of its target, else the first one named. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
    nutrient: Optional[str] = None
    # The total less the target: what remains over, or below zero what is missing (of an at-most target, the room left); absent without a target.
    surplus: Optional[MassPerAreaQuantity] = None
    # The amount of its target; absent without one.
    target: Optional[MassPerAreaQuantity] = None
    # All of it together.
    total: Optional[MassPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> NutrientLine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: NutrientLine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return NutrientLine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .cost_per_unit import CostPerUnit
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .cost_per_unit import CostPerUnit
        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "costOfNextUnit": lambda n : setattr(self, 'cost_of_next_unit', n.get_object_value(CostPerUnit)),
            "credits": lambda n : setattr(self, 'credits', n.get_object_value(MassPerAreaQuantity)),
            "fromComputedRates": lambda n : setattr(self, 'from_computed_rates', n.get_object_value(MassPerAreaQuantity)),
            "fromFixedRates": lambda n : setattr(self, 'from_fixed_rates', n.get_object_value(MassPerAreaQuantity)),
            "kind": lambda n : setattr(self, 'kind', n.get_str_value()),
            "met": lambda n : setattr(self, 'met', n.get_bool_value()),
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_str_value()),
            "surplus": lambda n : setattr(self, 'surplus', n.get_object_value(MassPerAreaQuantity)),
            "target": lambda n : setattr(self, 'target', n.get_object_value(MassPerAreaQuantity)),
            "total": lambda n : setattr(self, 'total', n.get_object_value(MassPerAreaQuantity)),
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
        writer.write_object_value("costOfNextUnit", self.cost_of_next_unit)
        writer.write_object_value("credits", self.credits)
        writer.write_object_value("fromComputedRates", self.from_computed_rates)
        writer.write_object_value("fromFixedRates", self.from_fixed_rates)
        writer.write_str_value("kind", self.kind)
        writer.write_bool_value("met", self.met)
        writer.write_str_value("nutrient", self.nutrient)
        writer.write_object_value("surplus", self.surplus)
        writer.write_object_value("target", self.target)
        writer.write_object_value("total", self.total)
        writer.write_additional_data_value(self.additional_data)
    


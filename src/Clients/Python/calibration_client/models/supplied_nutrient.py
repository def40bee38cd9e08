from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class SuppliedNutrient(AdditionalDataHolder, Parsable):
    """
    An amount of a nutrient.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The amount.
    amount: Optional[MassPerAreaQuantity] = None
    # The nutrient in the form that the amount is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
    nutrient: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SuppliedNutrient:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SuppliedNutrient
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SuppliedNutrient()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "amount": lambda n : setattr(self, 'amount', n.get_object_value(MassPerAreaQuantity)),
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_str_value()),
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
        writer.write_object_value("amount", self.amount)
        writer.write_str_value("nutrient", self.nutrient)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .credited_nutrient_nutrient import CreditedNutrient_nutrient
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class CreditedNutrient(Parsable):
    """
    A nutrient that is there already.
    """
    # Amount per area. Range: 0 to 10000 kg/ha.
    amount: Optional[MassPerAreaQuantity] = None
    # The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4.
    nutrient: Optional[CreditedNutrient_nutrient] = None
    # Where it comes from, in your words.
    origin: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CreditedNutrient:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CreditedNutrient
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CreditedNutrient()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .credited_nutrient_nutrient import CreditedNutrient_nutrient
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .credited_nutrient_nutrient import CreditedNutrient_nutrient
        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "amount": lambda n : setattr(self, 'amount', n.get_object_value(MassPerAreaQuantity)),
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_enum_value(CreditedNutrient_nutrient)),
            "origin": lambda n : setattr(self, 'origin', n.get_str_value()),
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
        writer.write_enum_value("nutrient", self.nutrient)
        writer.write_str_value("origin", self.origin)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .wanted_nutrient_kind import WantedNutrient_kind
    from .wanted_nutrient_nutrient import WantedNutrient_nutrient

@dataclass
class WantedNutrient(Parsable):
    """
    A nutrient that is wanted, or limited.
    """
    # Amount per area. Zero only with `at-most` or `exactly`. Range: 0 to 10000 kg/ha.
    amount: Optional[MassPerAreaQuantity] = None
    # How the amount is meant: `at-least`, `exactly` or `at-most`. Default at-least: common practice, no published source.
    kind: Optional[WantedNutrient_kind] = None
    # With at-least: the most that may be given, credits included. No limit when left out. No default. Range: 0 to 10000 kg/ha.
    most: Optional[MassPerAreaQuantity] = None
    # The nutrient in the form that the amount is stated in, as the element (N, P, K, S, and SO4-S for sulfur in sulfate) or as P2O5, K2O, SO3 or SO4. The answer speaks of it in the same form.
    nutrient: Optional[WantedNutrient_nutrient] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WantedNutrient:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WantedNutrient
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WantedNutrient()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .wanted_nutrient_kind import WantedNutrient_kind
        from .wanted_nutrient_nutrient import WantedNutrient_nutrient

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .wanted_nutrient_kind import WantedNutrient_kind
        from .wanted_nutrient_nutrient import WantedNutrient_nutrient

        fields: dict[str, Callable[[Any], None]] = {
            "amount": lambda n : setattr(self, 'amount', n.get_object_value(MassPerAreaQuantity)),
            "kind": lambda n : setattr(self, 'kind', n.get_enum_value(WantedNutrient_kind)),
            "most": lambda n : setattr(self, 'most', n.get_object_value(MassPerAreaQuantity)),
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_enum_value(WantedNutrient_nutrient)),
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
        writer.write_enum_value("kind", self.kind)
        writer.write_object_value("most", self.most)
        writer.write_enum_value("nutrient", self.nutrient)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .local_limit_with_seed_nutrient import LocalLimitWithSeed_nutrient
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class LocalLimitWithSeed(Parsable):
    """
    A limit from the caller's own guidance.
    """
    # What it counts. `phosphate` is P2O5, `potash` K2O.
    nutrient: Optional[LocalLimitWithSeed_nutrient] = None
    # The most that it allows with the seed. Range: 0 to 100000 kg/ha.
    rate: Optional[MassPerAreaQuantity] = None
    # Where it is printed; answers name it.
    source: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LocalLimitWithSeed:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LocalLimitWithSeed
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LocalLimitWithSeed()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .local_limit_with_seed_nutrient import LocalLimitWithSeed_nutrient
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .local_limit_with_seed_nutrient import LocalLimitWithSeed_nutrient
        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_enum_value(LocalLimitWithSeed_nutrient)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "source": lambda n : setattr(self, 'source', n.get_str_value()),
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
        writer.write_enum_value("nutrient", self.nutrient)
        writer.write_object_value("rate", self.rate)
        writer.write_str_value("source", self.source)
    


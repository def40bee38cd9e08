from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class RateOfLot(AdditionalDataHolder, Parsable):
    """
    Rates for the new lot.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Mass per area that holds them now; absent without the kernel mass of the new lot.
    for_same_seeds: Optional[MassPerAreaQuantity] = None
    # Mass per area that brings up as many plants as before; absent unless both germinations are known.
    for_same_stand: Optional[MassPerAreaQuantity] = None
    # Pure seeds per area, as with the lot before.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RateOfLot:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RateOfLot
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RateOfLot()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "forSameSeeds": lambda n : setattr(self, 'for_same_seeds', n.get_object_value(MassPerAreaQuantity)),
            "forSameStand": lambda n : setattr(self, 'for_same_stand', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
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
        writer.write_object_value("forSameSeeds", self.for_same_seeds)
        writer.write_object_value("forSameStand", self.for_same_stand)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class StandOfPlan(Parsable):
    """
    A stand that is wanted. Give emergence, with a lot of known germination, or survival.
    """
    # Field emergence: plants per seed that can germinate. Goes with the germination of the lot. No default. Range: above 0 and up to 100 %.
    emergence: Optional[RatioQuantity] = None
    # Plants per area that are to stand. Range: above 0 and up to 100000 /m2.
    plants: Optional[CountPerAreaQuantity] = None
    # Plants per pure seed, germination included. Takes the place of germination and emergence. No default. Range: above 0 and up to 100 %.
    survival: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StandOfPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StandOfPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StandOfPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_area_quantity import CountPerAreaQuantity
        from .ratio_quantity import RatioQuantity

        from .count_per_area_quantity import CountPerAreaQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "emergence": lambda n : setattr(self, 'emergence', n.get_object_value(RatioQuantity)),
            "plants": lambda n : setattr(self, 'plants', n.get_object_value(CountPerAreaQuantity)),
            "survival": lambda n : setattr(self, 'survival', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("emergence", self.emergence)
        writer.write_object_value("plants", self.plants)
        writer.write_object_value("survival", self.survival)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class NutrientLoadAnswer(AdditionalDataHolder, Parsable):
    """
    A nutrient with the seed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What is counted. `phosphate` is P2O5, `potash` K2O. Known today: `nitrogen`, `urea-nitrogen`, `urea-and-sulfate-nitrogen`, `nitrogen-beside-phosphates`, `phosphate`, `potash`, `nitrogen-plus-potash`, `sulfur`, `all-nutrients`.
    nutrient: Optional[str] = None
    # The heaviest load of all zones.
    rate: Optional[MassPerAreaQuantity] = None
    # The zone with that load, counted from 1.
    zone: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> NutrientLoadAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: NutrientLoadAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return NutrientLoadAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_str_value()),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "zone": lambda n : setattr(self, 'zone', n.get_int_value()),
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
        writer.write_str_value("nutrient", self.nutrient)
        writer.write_object_value("rate", self.rate)
        writer.write_int_value("zone", self.zone)
        writer.write_additional_data_value(self.additional_data)
    


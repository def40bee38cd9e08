from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class RateAnswer(AdditionalDataHolder, Parsable):
    """
    A rate and the stand that comes of it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The stand in the mean of all seasons.
    expected_stand: Optional[CountPerAreaQuantity] = None
    # Probability that the minimum stand is reached.
    probability_reached: Optional[float] = None
    # Mass per area; absent without a kernel mass.
    rate: Optional[MassPerAreaQuantity] = None
    # Pure seeds per area.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # The stand that is reached with the wanted probability.
    stand_reached: Optional[CountPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RateAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RateAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RateAnswer()
    
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
            "expectedStand": lambda n : setattr(self, 'expected_stand', n.get_object_value(CountPerAreaQuantity)),
            "probabilityReached": lambda n : setattr(self, 'probability_reached', n.get_float_value()),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "standReached": lambda n : setattr(self, 'stand_reached', n.get_object_value(CountPerAreaQuantity)),
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
        writer.write_object_value("expectedStand", self.expected_stand)
        writer.write_float_value("probabilityReached", self.probability_reached)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("standReached", self.stand_reached)
        writer.write_additional_data_value(self.additional_data)
    


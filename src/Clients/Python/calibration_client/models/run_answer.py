from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
    from .ratio_quantity import RatioQuantity
    from .speed_quantity import SpeedQuantity

@dataclass
class RunAnswer(AdditionalDataHolder, Parsable):
    """
    One run as evaluated.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Its counts per distance against those of all runs together.
    deviation: Optional[RatioQuantity] = None
    # Distance driven.
    distance: Optional[LengthQuantity] = None
    # Distance per turn of the wheel of this run alone.
    distance_per_turn: Optional[LengthQuantity] = None
    # Distance over time; absent without a time.
    ground_speed: Optional[SpeedQuantity] = None
    # Pulses per distance of this run alone.
    pulses_per_distance: Optional[PulsesPerDistanceQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RunAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RunAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RunAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
        from .ratio_quantity import RatioQuantity
        from .speed_quantity import SpeedQuantity

        from .length_quantity import LengthQuantity
        from .pulses_per_distance_quantity import PulsesPerDistanceQuantity
        from .ratio_quantity import RatioQuantity
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "deviation": lambda n : setattr(self, 'deviation', n.get_object_value(RatioQuantity)),
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "distancePerTurn": lambda n : setattr(self, 'distance_per_turn', n.get_object_value(LengthQuantity)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "pulsesPerDistance": lambda n : setattr(self, 'pulses_per_distance', n.get_object_value(PulsesPerDistanceQuantity)),
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
        writer.write_object_value("deviation", self.deviation)
        writer.write_object_value("distance", self.distance)
        writer.write_object_value("distancePerTurn", self.distance_per_turn)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("pulsesPerDistance", self.pulses_per_distance)
        writer.write_additional_data_value(self.additional_data)
    


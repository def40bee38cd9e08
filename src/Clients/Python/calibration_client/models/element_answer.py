from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .corner_answer import CornerAnswer
    from .rate_window_answer import RateWindowAnswer
    from .ratio_quantity import RatioQuantity
    from .speed_window_answer import SpeedWindowAnswer

@dataclass
class ElementAnswer(AdditionalDataHolder, Parsable):
    """
    One element.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Lowest and highest rate at lowest and highest ground speed.
    corners: Optional[list[CornerAnswer]] = None
    # It serves every rate at every ground speed.
    fits: Optional[bool] = None
    # Its name.
    name: Optional[str] = None
    # For each ground speed, the rates inside the limits.
    rate_windows: Optional[list[RateWindowAnswer]] = None
    # Room to the nearer limit of its speed: 25 % means that the nearer limit is a factor of 1.25 away; negative when it does not fit; absent without limits.
    room: Optional[RatioQuantity] = None
    # For each rate above zero, the ground speeds inside the limits.
    speed_windows: Optional[list[SpeedWindowAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ElementAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ElementAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ElementAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .corner_answer import CornerAnswer
        from .rate_window_answer import RateWindowAnswer
        from .ratio_quantity import RatioQuantity
        from .speed_window_answer import SpeedWindowAnswer

        from .corner_answer import CornerAnswer
        from .rate_window_answer import RateWindowAnswer
        from .ratio_quantity import RatioQuantity
        from .speed_window_answer import SpeedWindowAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "corners": lambda n : setattr(self, 'corners', n.get_collection_of_object_values(CornerAnswer)),
            "fits": lambda n : setattr(self, 'fits', n.get_bool_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "rateWindows": lambda n : setattr(self, 'rate_windows', n.get_collection_of_object_values(RateWindowAnswer)),
            "room": lambda n : setattr(self, 'room', n.get_object_value(RatioQuantity)),
            "speedWindows": lambda n : setattr(self, 'speed_windows', n.get_collection_of_object_values(SpeedWindowAnswer)),
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
        writer.write_collection_of_object_values("corners", self.corners)
        writer.write_bool_value("fits", self.fits)
        writer.write_str_value("name", self.name)
        writer.write_collection_of_object_values("rateWindows", self.rate_windows)
        writer.write_object_value("room", self.room)
        writer.write_collection_of_object_values("speedWindows", self.speed_windows)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .ratio_quantity import RatioQuantity
    from .speed_quantity import SpeedQuantity
    from .time_quantity import TimeQuantity

@dataclass
class CapacityAnswer(AdditionalDataHolder, Parsable):
    """
    Area worked at one ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area worked in a day of the stated time; absent without one.
    area_per_day: Optional[AreaQuantity] = None
    # Area worked in one hour.
    area_per_hour: Optional[AreaQuantity] = None
    # Share of the time in the field that is spent working.
    field_efficiency: Optional[RatioQuantity] = None
    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # Time in the field for the stated area; absent without one.
    time_for_area: Optional[TimeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CapacityAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CapacityAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CapacityAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .ratio_quantity import RatioQuantity
        from .speed_quantity import SpeedQuantity
        from .time_quantity import TimeQuantity

        from .area_quantity import AreaQuantity
        from .ratio_quantity import RatioQuantity
        from .speed_quantity import SpeedQuantity
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "areaPerDay": lambda n : setattr(self, 'area_per_day', n.get_object_value(AreaQuantity)),
            "areaPerHour": lambda n : setattr(self, 'area_per_hour', n.get_object_value(AreaQuantity)),
            "fieldEfficiency": lambda n : setattr(self, 'field_efficiency', n.get_object_value(RatioQuantity)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "timeForArea": lambda n : setattr(self, 'time_for_area', n.get_object_value(TimeQuantity)),
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
        writer.write_object_value("areaPerDay", self.area_per_day)
        writer.write_object_value("areaPerHour", self.area_per_hour)
        writer.write_object_value("fieldEfficiency", self.field_efficiency)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("timeForArea", self.time_for_area)
        writer.write_additional_data_value(self.additional_data)
    


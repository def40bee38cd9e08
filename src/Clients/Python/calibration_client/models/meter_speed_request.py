from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .element_of_meter import ElementOfMeter
    from .fan_of_machine import FanOfMachine
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .ratio_quantity import RatioQuantity
    from .rotation_limits import RotationLimits
    from .speed_quantity import SpeedQuantity
    from .stops_in_field import StopsInField
    from .time_quantity import TimeQuantity

@dataclass
class MeterSpeedRequest(Parsable):
    """
    What is asked of a meter, and the metering elements it can be fitted with.
    """
    # Area to be worked; gives the time in the field. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # Width that the meter covers. Range: 0.01 to 200 m.
    covered_width: Optional[LengthQuantity] = None
    # The metering elements that the machine has for this meter.
    elements: Optional[list[ElementOfMeter]] = None
    # The air stream that carries this product and others.
    fan: Optional[FanOfMachine] = None
    # Share of the time spent working at that width and speed. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %. Range: 1 to 100 %.
    field_efficiency: Optional[RatioQuantity] = None
    # Ground speeds: one, or the slowest and the fastest of the field. Range: 0.01 to 100 km/h.
    ground_speeds: Optional[list[SpeedQuantity]] = None
    # Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside others. Range: 0 to 100000 kg/ha.
    rates: Optional[list[MassPerAreaQuantity]] = None
    # Limits of the meter speed for elements that do not name their own.
    speed_limits: Optional[RotationLimits] = None
    # Turns and refills, from which the field efficiency follows at each ground speed. Give this or fieldEfficiency.
    stops: Optional[StopsInField] = None
    # Time in the field on one day; gives the area of a day. No default. Range: above 0 and up to 24 h.
    time_per_day: Optional[TimeQuantity] = None
    # Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between passes. Range: 0.01 to 200 m.
    working_width: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterSpeedRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterSpeedRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterSpeedRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .element_of_meter import ElementOfMeter
        from .fan_of_machine import FanOfMachine
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity
        from .rotation_limits import RotationLimits
        from .speed_quantity import SpeedQuantity
        from .stops_in_field import StopsInField
        from .time_quantity import TimeQuantity

        from .area_quantity import AreaQuantity
        from .element_of_meter import ElementOfMeter
        from .fan_of_machine import FanOfMachine
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .ratio_quantity import RatioQuantity
        from .rotation_limits import RotationLimits
        from .speed_quantity import SpeedQuantity
        from .stops_in_field import StopsInField
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "coveredWidth": lambda n : setattr(self, 'covered_width', n.get_object_value(LengthQuantity)),
            "elements": lambda n : setattr(self, 'elements', n.get_collection_of_object_values(ElementOfMeter)),
            "fan": lambda n : setattr(self, 'fan', n.get_object_value(FanOfMachine)),
            "fieldEfficiency": lambda n : setattr(self, 'field_efficiency', n.get_object_value(RatioQuantity)),
            "groundSpeeds": lambda n : setattr(self, 'ground_speeds', n.get_collection_of_object_values(SpeedQuantity)),
            "rates": lambda n : setattr(self, 'rates', n.get_collection_of_object_values(MassPerAreaQuantity)),
            "speedLimits": lambda n : setattr(self, 'speed_limits', n.get_object_value(RotationLimits)),
            "stops": lambda n : setattr(self, 'stops', n.get_object_value(StopsInField)),
            "timePerDay": lambda n : setattr(self, 'time_per_day', n.get_object_value(TimeQuantity)),
            "workingWidth": lambda n : setattr(self, 'working_width', n.get_object_value(LengthQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_object_value("coveredWidth", self.covered_width)
        writer.write_collection_of_object_values("elements", self.elements)
        writer.write_object_value("fan", self.fan)
        writer.write_object_value("fieldEfficiency", self.field_efficiency)
        writer.write_collection_of_object_values("groundSpeeds", self.ground_speeds)
        writer.write_collection_of_object_values("rates", self.rates)
        writer.write_object_value("speedLimits", self.speed_limits)
        writer.write_object_value("stops", self.stops)
        writer.write_object_value("timePerDay", self.time_per_day)
        writer.write_object_value("workingWidth", self.working_width)
    


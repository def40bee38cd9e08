from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .pressure_quantity import PressureQuantity
    from .ratio_quantity import RatioQuantity
    from .rotation_quantity import RotationQuantity
    from .temperature_quantity import TemperatureQuantity

@dataclass
class Conditions(Parsable):
    """
    Conditions of a test or of sowing.
    """
    # Temperature of the air. No default. Range: -60 to 70 degC.
    air_temperature: Optional[TemperatureQuantity] = None
    # Speed of the fan. No default. Range: 0 to 10000 rpm.
    fan_speed: Optional[RotationQuantity] = None
    # Moisture of the product by mass. No default. Range: 0 to 100 %.
    product_moisture: Optional[RatioQuantity] = None
    # Slope of the machine along its travel, uphill positive. No default. Range: -100 to 100 %.
    slope: Optional[RatioQuantity] = None
    # Fill of the tank. No default. Range: 0 to 100 %.
    tank_level: Optional[RatioQuantity] = None
    # Pressure in the tank above that of the air around. No default. Range: 0 to 100 kPa.
    tank_pressure: Optional[PressureQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> Conditions:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: Conditions
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return Conditions()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .pressure_quantity import PressureQuantity
        from .ratio_quantity import RatioQuantity
        from .rotation_quantity import RotationQuantity
        from .temperature_quantity import TemperatureQuantity

        from .pressure_quantity import PressureQuantity
        from .ratio_quantity import RatioQuantity
        from .rotation_quantity import RotationQuantity
        from .temperature_quantity import TemperatureQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "airTemperature": lambda n : setattr(self, 'air_temperature', n.get_object_value(TemperatureQuantity)),
            "fanSpeed": lambda n : setattr(self, 'fan_speed', n.get_object_value(RotationQuantity)),
            "productMoisture": lambda n : setattr(self, 'product_moisture', n.get_object_value(RatioQuantity)),
            "slope": lambda n : setattr(self, 'slope', n.get_object_value(RatioQuantity)),
            "tankLevel": lambda n : setattr(self, 'tank_level', n.get_object_value(RatioQuantity)),
            "tankPressure": lambda n : setattr(self, 'tank_pressure', n.get_object_value(PressureQuantity)),
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
        writer.write_object_value("airTemperature", self.air_temperature)
        writer.write_object_value("fanSpeed", self.fan_speed)
        writer.write_object_value("productMoisture", self.product_moisture)
        writer.write_object_value("slope", self.slope)
        writer.write_object_value("tankLevel", self.tank_level)
        writer.write_object_value("tankPressure", self.tank_pressure)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .rotation_quantity import RotationQuantity
    from .speed_quantity import SpeedQuantity

@dataclass
class CornerAnswer(AdditionalDataHolder, Parsable):
    """
    One combination of rate and ground speed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Ground between two discharges; absent when the pockets are unknown.
    discharge_spacing: Optional[LengthQuantity] = None
    # The ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # The meter speed that it takes.
    meter_speed: Optional[RotationQuantity] = None
    # The rate.
    rate: Optional[MassPerAreaQuantity] = None
    # Inside the limits.
    within_limits: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CornerAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CornerAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CornerAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .rotation_quantity import RotationQuantity
        from .speed_quantity import SpeedQuantity

        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .rotation_quantity import RotationQuantity
        from .speed_quantity import SpeedQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "dischargeSpacing": lambda n : setattr(self, 'discharge_spacing', n.get_object_value(LengthQuantity)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "withinLimits": lambda n : setattr(self, 'within_limits', n.get_bool_value()),
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
        writer.write_object_value("dischargeSpacing", self.discharge_spacing)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_object_value("rate", self.rate)
        writer.write_bool_value("withinLimits", self.within_limits)
        writer.write_additional_data_value(self.additional_data)
    


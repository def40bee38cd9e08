from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .bound_answer import BoundAnswer
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .rotation_quantity import RotationQuantity
    from .speed_check_answer import SpeedCheckAnswer
    from .time_quantity import TimeQuantity

@dataclass
class MeterPlanAnswer(AdditionalDataHolder, Parsable):
    """
    One meter of the plan.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Every bound, acting or not.
    bounds: Optional[list[BoundAnswer]] = None
    # Net mass to catch.
    catch_mass: Optional[MassQuantity] = None
    # Catches for the wanted precision; absent when no number of catches reaches it.
    catches: Optional[int] = None
    # Share of the container's volume that the catch fills; absent without volume.
    container_fill: Optional[RatioQuantity] = None
    # Expanded uncertainty to expect of that many catches, relative; of one catch when none reach the wanted one.
    expected_precision: Optional[RatioQuantity] = None
    # The bound that acts.
    limited_by: Optional[BoundAnswer] = None
    # The meter.
    meter: Optional[str] = None
    # Meter speed at the simulated ground speed.
    meter_speed: Optional[RotationQuantity] = None
    # What it meters.
    product: Optional[str] = None
    # Revolutions to turn; whole, except on a shared shaft.
    revolutions: Optional[RevolutionsQuantity] = None
    # Run time at the simulated ground speed.
    run_time: Optional[TimeQuantity] = None
    # Area that the catch would have covered.
    simulated_area: Optional[AreaQuantity] = None
    # Meter speeds at the ends of the working range; absent when it was not stated.
    speed_checks: Optional[list[SpeedCheckAnswer]] = None
    # The meter speed is inside its limits.
    within_limits: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterPlanAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterPlanAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterPlanAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .bound_answer import BoundAnswer
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_quantity import RotationQuantity
        from .speed_check_answer import SpeedCheckAnswer
        from .time_quantity import TimeQuantity

        from .area_quantity import AreaQuantity
        from .bound_answer import BoundAnswer
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_quantity import RotationQuantity
        from .speed_check_answer import SpeedCheckAnswer
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bounds": lambda n : setattr(self, 'bounds', n.get_collection_of_object_values(BoundAnswer)),
            "catchMass": lambda n : setattr(self, 'catch_mass', n.get_object_value(MassQuantity)),
            "catches": lambda n : setattr(self, 'catches', n.get_int_value()),
            "containerFill": lambda n : setattr(self, 'container_fill', n.get_object_value(RatioQuantity)),
            "expectedPrecision": lambda n : setattr(self, 'expected_precision', n.get_object_value(RatioQuantity)),
            "limitedBy": lambda n : setattr(self, 'limited_by', n.get_object_value(BoundAnswer)),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "revolutions": lambda n : setattr(self, 'revolutions', n.get_object_value(RevolutionsQuantity)),
            "runTime": lambda n : setattr(self, 'run_time', n.get_object_value(TimeQuantity)),
            "simulatedArea": lambda n : setattr(self, 'simulated_area', n.get_object_value(AreaQuantity)),
            "speedChecks": lambda n : setattr(self, 'speed_checks', n.get_collection_of_object_values(SpeedCheckAnswer)),
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
        writer.write_collection_of_object_values("bounds", self.bounds)
        writer.write_object_value("catchMass", self.catch_mass)
        writer.write_int_value("catches", self.catches)
        writer.write_object_value("containerFill", self.container_fill)
        writer.write_object_value("expectedPrecision", self.expected_precision)
        writer.write_object_value("limitedBy", self.limited_by)
        writer.write_str_value("meter", self.meter)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_str_value("product", self.product)
        writer.write_object_value("revolutions", self.revolutions)
        writer.write_object_value("runTime", self.run_time)
        writer.write_object_value("simulatedArea", self.simulated_area)
        writer.write_collection_of_object_values("speedChecks", self.speed_checks)
        writer.write_bool_value("withinLimits", self.within_limits)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .catch_plan_request_count_start import CatchPlanRequest_countStart
    from .catch_plan_request_drive import CatchPlanRequest_drive
    from .catch_plan_request_tare_reading import CatchPlanRequest_tareReading
    from .container_of_plan import ContainerOfPlan
    from .disturbed_point_of_plan import DisturbedPointOfPlan
    from .mass_quantity import MassQuantity
    from .meter_of_plan import MeterOfPlan
    from .ratio_quantity import RatioQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .scale_of_test import ScaleOfTest
    from .speed_quantity import SpeedQuantity
    from .speed_range import SpeedRange
    from .time_quantity import TimeQuantity

@dataclass
class CatchPlanRequest(Parsable):
    """
    A catch test to be planned: one or several meters in one run.
    """
    # The container under each meter that does not name its own.
    container: Optional[ContainerOfPlan] = None
    # Where a count begins within its smallest step: `free` (the default) or `on-edge` of the sensor.
    count_start: Optional[CatchPlanRequest_countStart] = None
    # Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    counter_resolution: Optional[RevolutionsQuantity] = None
    # Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
    coverage_probability: Optional[float] = None
    # What the test disturbs on this machine and has to be put back, in the owner's words.
    disturbed_points: Optional[list[DisturbedPointOfPlan]] = None
    # How the meters are driven: `separate` drives that may stop one by one (the default), or a `shared-shaft`.
    drive: Optional[CatchPlanRequest_drive] = None
    # Ground speed that the controller is made to believe in during the run; usually the planned one. Range: above 0 and up to 100 km/h.
    ground_speed: Optional[SpeedQuantity] = None
    # Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. Range: above 0 and up to 1000 t.
    lift_limit: Optional[MassQuantity] = None
    # Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h.
    longest_run: Optional[TimeQuantity] = None
    # The meters of the run.
    meters: Optional[list[MeterOfPlan]] = None
    # The scale that will weigh the catches.
    scale: Optional[ScaleOfTest] = None
    # How the empty container will be taken into account: `each` (the default), `shared` or `zeroed`.
    tare_reading: Optional[CatchPlanRequest_tareReading] = None
    # Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %.
    wanted_precision: Optional[RatioQuantity] = None
    # Ground speeds between which the field will be worked; the meter speeds at both ends are checked.
    working_speeds: Optional[SpeedRange] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchPlanRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchPlanRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchPlanRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .catch_plan_request_count_start import CatchPlanRequest_countStart
        from .catch_plan_request_drive import CatchPlanRequest_drive
        from .catch_plan_request_tare_reading import CatchPlanRequest_tareReading
        from .container_of_plan import ContainerOfPlan
        from .disturbed_point_of_plan import DisturbedPointOfPlan
        from .mass_quantity import MassQuantity
        from .meter_of_plan import MeterOfPlan
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .scale_of_test import ScaleOfTest
        from .speed_quantity import SpeedQuantity
        from .speed_range import SpeedRange
        from .time_quantity import TimeQuantity

        from .catch_plan_request_count_start import CatchPlanRequest_countStart
        from .catch_plan_request_drive import CatchPlanRequest_drive
        from .catch_plan_request_tare_reading import CatchPlanRequest_tareReading
        from .container_of_plan import ContainerOfPlan
        from .disturbed_point_of_plan import DisturbedPointOfPlan
        from .mass_quantity import MassQuantity
        from .meter_of_plan import MeterOfPlan
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .scale_of_test import ScaleOfTest
        from .speed_quantity import SpeedQuantity
        from .speed_range import SpeedRange
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "container": lambda n : setattr(self, 'container', n.get_object_value(ContainerOfPlan)),
            "countStart": lambda n : setattr(self, 'count_start', n.get_enum_value(CatchPlanRequest_countStart)),
            "counterResolution": lambda n : setattr(self, 'counter_resolution', n.get_object_value(RevolutionsQuantity)),
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "disturbedPoints": lambda n : setattr(self, 'disturbed_points', n.get_collection_of_object_values(DisturbedPointOfPlan)),
            "drive": lambda n : setattr(self, 'drive', n.get_enum_value(CatchPlanRequest_drive)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "liftLimit": lambda n : setattr(self, 'lift_limit', n.get_object_value(MassQuantity)),
            "longestRun": lambda n : setattr(self, 'longest_run', n.get_object_value(TimeQuantity)),
            "meters": lambda n : setattr(self, 'meters', n.get_collection_of_object_values(MeterOfPlan)),
            "scale": lambda n : setattr(self, 'scale', n.get_object_value(ScaleOfTest)),
            "tareReading": lambda n : setattr(self, 'tare_reading', n.get_enum_value(CatchPlanRequest_tareReading)),
            "wantedPrecision": lambda n : setattr(self, 'wanted_precision', n.get_object_value(RatioQuantity)),
            "workingSpeeds": lambda n : setattr(self, 'working_speeds', n.get_object_value(SpeedRange)),
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
        writer.write_object_value("container", self.container)
        writer.write_enum_value("countStart", self.count_start)
        writer.write_object_value("counterResolution", self.counter_resolution)
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_collection_of_object_values("disturbedPoints", self.disturbed_points)
        writer.write_enum_value("drive", self.drive)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_object_value("liftLimit", self.lift_limit)
        writer.write_object_value("longestRun", self.longest_run)
        writer.write_collection_of_object_values("meters", self.meters)
        writer.write_object_value("scale", self.scale)
        writer.write_enum_value("tareReading", self.tare_reading)
        writer.write_object_value("wantedPrecision", self.wanted_precision)
        writer.write_object_value("workingSpeeds", self.working_speeds)
    


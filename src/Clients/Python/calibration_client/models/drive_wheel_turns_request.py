from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .drive_wheel_of_machine import DriveWheelOfMachine
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .scale_of_test import ScaleOfTest
    from .turn_test_of_wheel import TurnTestOfWheel

@dataclass
class DriveWheelTurnsRequest(Parsable):
    """
    A ground-driven machine, and what fell while its drive wheel was turned.
    """
    # Areas for which the turns are wanted, for example 0.1 ha or 0.05 ac. Range: 0.0001 to 10000 ha.
    areas: Optional[list[AreaQuantity]] = None
    # Mass per revolution of the meter over the whole width, where known; gives the rate to expect. Needs meterRevolutionsPerTurn. No default. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # Meter revolutions per turn of the drive wheel. Left out, nothing is said of the meter. Default none: common practice, the wheel alone is counted. Range: 0.0001 to 10000.
    meter_revolutions_per_turn: Optional[RatioQuantity] = None
    # Standard deviation between outlets, relative; of use when not all were caught. Where three or more were weighed one by one, theirs is taken. Default 2.887 %: published limit of 5 % for each outlet (University of Georgia Extension; Field and Solie 2007), taken as rectangular. Range: 0 to 100 %.
    outlet_spread: Optional[RatioQuantity] = None
    # Outlets over that width; gives the catch of each, and is needed when not all of them are caught. No default.
    outlets: Optional[int] = None
    # Outlets that were caught, the same ones each time. Default all of them, or as many as perOutlet lists: common practice.
    outlets_caught: Optional[int] = None
    # Repeatability of one test (standard deviation), scale and count removed. Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % under 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    repeatability: Optional[RatioQuantity] = None
    # Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
    repeatability_degrees_of_freedom: Optional[float] = None
    # The scale that weighed the catches. Default an error of 0.5 % of the load and no rounding: judgement, no published source.
    scale: Optional[ScaleOfTest] = None
    # The setting used, as a plain number on the machine's own marks; gives the corrected one. No default.
    setting: Optional[float] = None
    # Share of its turns that the wheel lacks in the field: positive when it skids and turns less often than the distance asks for, so that it puts down as much less; negative when it turns more often. Leave it out when the circumference was measured at work: it holds the skid already. Default 0 %: none is reckoned with unless it is stated, although a wheel that skids puts down as much less; judgement, no published source. Range: -50 to 90 %.
    skid: Optional[RatioQuantity] = None
    # The rate to be put down. No default. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # Largest acceptable deviation of the rate from its target, and of an outlet from the mean of the outlets. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    tolerance: Optional[RatioQuantity] = None
    # Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    turn_resolution: Optional[RevolutionsQuantity] = None
    # Turn tests, all with the same setting and the same outlets.
    turn_tests: Optional[list[TurnTestOfWheel]] = None
    # The wheel that drives the meters.
    wheel: Optional[DriveWheelOfMachine] = None
    # Working width: openers times spacing. Range: 0.01 to 200 m.
    working_width: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DriveWheelTurnsRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DriveWheelTurnsRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DriveWheelTurnsRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .drive_wheel_of_machine import DriveWheelOfMachine
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .scale_of_test import ScaleOfTest
        from .turn_test_of_wheel import TurnTestOfWheel

        from .area_quantity import AreaQuantity
        from .drive_wheel_of_machine import DriveWheelOfMachine
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .scale_of_test import ScaleOfTest
        from .turn_test_of_wheel import TurnTestOfWheel

        fields: dict[str, Callable[[Any], None]] = {
            "areas": lambda n : setattr(self, 'areas', n.get_collection_of_object_values(AreaQuantity)),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "meterRevolutionsPerTurn": lambda n : setattr(self, 'meter_revolutions_per_turn', n.get_object_value(RatioQuantity)),
            "outletSpread": lambda n : setattr(self, 'outlet_spread', n.get_object_value(RatioQuantity)),
            "outlets": lambda n : setattr(self, 'outlets', n.get_int_value()),
            "outletsCaught": lambda n : setattr(self, 'outlets_caught', n.get_int_value()),
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(RatioQuantity)),
            "repeatabilityDegreesOfFreedom": lambda n : setattr(self, 'repeatability_degrees_of_freedom', n.get_float_value()),
            "scale": lambda n : setattr(self, 'scale', n.get_object_value(ScaleOfTest)),
            "setting": lambda n : setattr(self, 'setting', n.get_float_value()),
            "skid": lambda n : setattr(self, 'skid', n.get_object_value(RatioQuantity)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "tolerance": lambda n : setattr(self, 'tolerance', n.get_object_value(RatioQuantity)),
            "turnResolution": lambda n : setattr(self, 'turn_resolution', n.get_object_value(RevolutionsQuantity)),
            "turnTests": lambda n : setattr(self, 'turn_tests', n.get_collection_of_object_values(TurnTestOfWheel)),
            "wheel": lambda n : setattr(self, 'wheel', n.get_object_value(DriveWheelOfMachine)),
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
        writer.write_collection_of_object_values("areas", self.areas)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("meterRevolutionsPerTurn", self.meter_revolutions_per_turn)
        writer.write_object_value("outletSpread", self.outlet_spread)
        writer.write_int_value("outlets", self.outlets)
        writer.write_int_value("outletsCaught", self.outlets_caught)
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_float_value("repeatabilityDegreesOfFreedom", self.repeatability_degrees_of_freedom)
        writer.write_object_value("scale", self.scale)
        writer.write_float_value("setting", self.setting)
        writer.write_object_value("skid", self.skid)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_object_value("tolerance", self.tolerance)
        writer.write_object_value("turnResolution", self.turn_resolution)
        writer.write_collection_of_object_values("turnTests", self.turn_tests)
        writer.write_object_value("wheel", self.wheel)
        writer.write_object_value("workingWidth", self.working_width)
    


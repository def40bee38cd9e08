from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .distance_sensor_request_meter_drive import DistanceSensorRequest_meterDrive
    from .entry_of_sensor import EntryOfSensor
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .price import Price
    from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .run_of_sensor import RunOfSensor
    from .value_of_sensor import ValueOfSensor
    from .width_of_machine import WidthOfMachine

@dataclass
class DistanceSensorRequest(Parsable):
    """
    Runs over a measured course, and what the controller holds.
    """
    # The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # How the controller takes the number; gives what to type in.
    controller_entry: Optional[EntryOfSensor] = None
    # Smallest step to which a distance between two marks is known: how closely the machine is lined up with each of them. Default 0.1 m: the machine is lined up with each mark to 5 cm either way; judgement, no published source. Range: 0 to 10 m.
    distance_resolution: Optional[LengthQuantity] = None
    # What turns the meters: `rate-controlled`, a drive that a controller sets by this sensor, or `ground-driven`, a wheel on the ground, so that a wrong value spoils the count of distance and area but not the rate. Default rate-controlled: common practice.
    meter_drive: Optional[DistanceSensorRequest_meterDrive] = None
    # Price of the product; gives the cost of wrong numbers.
    price: Optional[Price] = None
    # Sensor pulses in one turn of the wheel. With it, pulses and the rolling circumference follow from one another. No default. Range: above 0 and up to 1000000 pulses/rev.
    pulses_per_turn: Optional[PulsesPerRevolutionQuantity] = None
    # Runs to compare slip with, unloaded or on a hard road, counted like the others.
    reference_runs: Optional[list[RunOfSensor]] = None
    # Scatter of one run (standard deviation), counting and marking removed. Default 0.5 %: even, firm ground; judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    repeatability: Optional[RatioQuantity] = None
    # Degrees of freedom of that scatter. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
    repeatability_degrees_of_freedom: Optional[float] = None
    # The runs at work, on the ground that is seeded: one or more, each with pulses or each with wheel turns.
    runs: Optional[list[RunOfSensor]] = None
    # Change from which a second run has to confirm. Default 10 %: common practice: 10 to 15 %; no published source. Range: 0.1 to 100 %.
    second_run_change: Optional[RatioQuantity] = None
    # Limit of the error of the tape, relative. It is common to all runs, so more runs do not average it out. Default 0.2 %: a tape laid over uneven ground by hand, taken as rectangular; judgement, no published source. Range: 0 to 20 %.
    tape_limit: Optional[RatioQuantity] = None
    # The rate to be applied; gives the effect of wrong numbers. No default. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # Largest acceptable deviation of the value in force from the truth. Default 2 %: leaves most of the published 5 % on the rate to the metering; judgement, no published source. Range: 0.1 to 50 %.
    tolerance: Optional[RatioQuantity] = None
    # Smallest step of a count of wheel turns; pulses are counted to one. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    turn_resolution: Optional[RevolutionsQuantity] = None
    # The number that the controller holds now.
    value_in_force: Optional[ValueOfSensor] = None
    # Largest acceptable expanded uncertainty of the result. Default 1 %: two good runs reach it; judgement, no published source. Range: 0.1 to 50 %.
    wanted_precision: Optional[RatioQuantity] = None
    # The width of the machine; gives overlap, and what a wrong width does to the rate.
    width: Optional[WidthOfMachine] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DistanceSensorRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DistanceSensorRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DistanceSensorRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .distance_sensor_request_meter_drive import DistanceSensorRequest_meterDrive
        from .entry_of_sensor import EntryOfSensor
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .price import Price
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .run_of_sensor import RunOfSensor
        from .value_of_sensor import ValueOfSensor
        from .width_of_machine import WidthOfMachine

        from .area_quantity import AreaQuantity
        from .distance_sensor_request_meter_drive import DistanceSensorRequest_meterDrive
        from .entry_of_sensor import EntryOfSensor
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .price import Price
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .run_of_sensor import RunOfSensor
        from .value_of_sensor import ValueOfSensor
        from .width_of_machine import WidthOfMachine

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "controllerEntry": lambda n : setattr(self, 'controller_entry', n.get_object_value(EntryOfSensor)),
            "distanceResolution": lambda n : setattr(self, 'distance_resolution', n.get_object_value(LengthQuantity)),
            "meterDrive": lambda n : setattr(self, 'meter_drive', n.get_enum_value(DistanceSensorRequest_meterDrive)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
            "pulsesPerTurn": lambda n : setattr(self, 'pulses_per_turn', n.get_object_value(PulsesPerRevolutionQuantity)),
            "referenceRuns": lambda n : setattr(self, 'reference_runs', n.get_collection_of_object_values(RunOfSensor)),
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(RatioQuantity)),
            "repeatabilityDegreesOfFreedom": lambda n : setattr(self, 'repeatability_degrees_of_freedom', n.get_float_value()),
            "runs": lambda n : setattr(self, 'runs', n.get_collection_of_object_values(RunOfSensor)),
            "secondRunChange": lambda n : setattr(self, 'second_run_change', n.get_object_value(RatioQuantity)),
            "tapeLimit": lambda n : setattr(self, 'tape_limit', n.get_object_value(RatioQuantity)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "tolerance": lambda n : setattr(self, 'tolerance', n.get_object_value(RatioQuantity)),
            "turnResolution": lambda n : setattr(self, 'turn_resolution', n.get_object_value(RevolutionsQuantity)),
            "valueInForce": lambda n : setattr(self, 'value_in_force', n.get_object_value(ValueOfSensor)),
            "wantedPrecision": lambda n : setattr(self, 'wanted_precision', n.get_object_value(RatioQuantity)),
            "width": lambda n : setattr(self, 'width', n.get_object_value(WidthOfMachine)),
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
        writer.write_object_value("controllerEntry", self.controller_entry)
        writer.write_object_value("distanceResolution", self.distance_resolution)
        writer.write_enum_value("meterDrive", self.meter_drive)
        writer.write_object_value("price", self.price)
        writer.write_object_value("pulsesPerTurn", self.pulses_per_turn)
        writer.write_collection_of_object_values("referenceRuns", self.reference_runs)
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_float_value("repeatabilityDegreesOfFreedom", self.repeatability_degrees_of_freedom)
        writer.write_collection_of_object_values("runs", self.runs)
        writer.write_object_value("secondRunChange", self.second_run_change)
        writer.write_object_value("tapeLimit", self.tape_limit)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_object_value("tolerance", self.tolerance)
        writer.write_object_value("turnResolution", self.turn_resolution)
        writer.write_object_value("valueInForce", self.value_in_force)
        writer.write_object_value("wantedPrecision", self.wanted_precision)
        writer.write_object_value("width", self.width)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .catch_of_test import CatchOfTest
    from .catch_test_request_count_start import CatchTestRequest_countStart
    from .catch_test_request_ruled_out_mistakes import CatchTestRequest_ruledOutMistakes
    from .catch_test_request_tare_reading import CatchTestRequest_tareReading
    from .caught_points_of_test import CaughtPointsOfTest
    from .container_of_test import ContainerOfTest
    from .controller_entry_of_test import ControllerEntryOfTest
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .mass_quantity import MassQuantity
    from .other_container_of_test import OtherContainerOfTest
    from .other_delivery_of_test import OtherDeliveryOfTest
    from .product_of_test import ProductOfTest
    from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity
    from .reference_of_test import ReferenceOfTest
    from .revolutions_quantity import RevolutionsQuantity
    from .rotation_quantity import RotationQuantity
    from .scale_of_test import ScaleOfTest
    from .time_quantity import TimeQuantity

@dataclass
class CatchTestRequest(Parsable):
    """
    A catch test of one meter with one product.
    """
    # The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # Points or outlets whose product is meant to fall into the container; tells what one missed point would look like. No default.
    catch_points: Optional[int] = None
    # The catches in the order in which they were made.
    catches: Optional[list[CatchOfTest]] = None
    # Only some of the points that the meter feeds were caught, the same ones each time.
    caught_points: Optional[CaughtPointsOfTest] = None
    # The container of the catches, where known; makes overflow and a forgotten tare easier to tell.
    container: Optional[ContainerOfTest] = None
    # The form in which the controller takes the value.
    controller_entry: Optional[ControllerEntryOfTest] = None
    # Where a count begins within its smallest step: `free` (anywhere, the default) or `on-edge` of the sensor.
    count_start: Optional[CatchTestRequest_countStart] = None
    # Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    counter_resolution: Optional[RevolutionsQuantity] = None
    # Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
    coverage_probability: Optional[float] = None
    # Standard deviation from day to day beyond the scatter of catches. Default 1 %: default until the series has five tests; judgement, no published source. Range: 0 to 20 %.
    day_to_day: Optional[RatioQuantity] = None
    # Smallest step of the indicated mass. Default 0.1 kg: default; judgement, no published source. Range: 0 to 100 kg.
    indicated_mass_resolution: Optional[MassQuantity] = None
    # What the owner calls the meter.
    meter: Optional[str] = None
    # Meter revolutions per turn of the crank or wheel; needed when catches give turns. No default. Range: 0.0001 to 10000.
    meter_revolutions_per_turn: Optional[RatioQuantity] = None
    # Steady meter speed; needed when catches give a run time or the controller takes a mass per time. No default. Range: above 0 and up to 10000 rpm.
    meter_speed: Optional[RotationQuantity] = None
    # The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default false.
    new_lot: Optional[bool] = None
    # Other containers at hand, whose tare may have been taken by mistake.
    other_containers: Optional[list[OtherContainerOfTest]] = None
    # Other metering elements or settings of this meter and what they would give of this product.
    other_elements: Optional[list[OtherDeliveryOfTest]] = None
    # Other products of this machine and what the fitted element would give of them.
    other_products: Optional[list[OtherDeliveryOfTest]] = None
    # Pockets or flutes of the metering element that discharge one after the other in one revolution, where known. No default.
    pockets_per_revolution: Optional[int] = None
    # The product.
    product: Optional[ProductOfTest] = None
    # Sensor pulses per meter revolution; needed when catches give pulses or the controller takes a mass per pulse. No default. Range: above 0 and up to 1000000 pulses/rev.
    pulses_per_revolution: Optional[PulsesPerRevolutionQuantity] = None
    # Repeatability of one catch (standard deviation), scale and counter parts removed. Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % for dusty or caking products or under 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    repeatability: Optional[RatioQuantity] = None
    # Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
    repeatability_degrees_of_freedom: Optional[float] = None
    # Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement.
    ruled_out_mistakes: Optional[list[CatchTestRequest_ruledOutMistakes]] = None
    # The scale that weighed the catches.
    scale: Optional[ScaleOfTest] = None
    # Change from which a second catch has to confirm. Default 10 %: common practice: 10 to 15 %; no published source. Range: 0.1 to 100 %.
    second_catch_change: Optional[RatioQuantity] = None
    # The one tare reading that serves all catches. No default. Range: above 0 and up to 1000 t.
    shared_tare: Optional[MassQuantity] = None
    # A predicted value to compare with where none is in force yet. No default. Range: above 0 and up to 1000 kg/rev.
    start_value: Optional[ReferenceOfTest] = None
    # How the empty container was taken into account: `each` catch has its own tare reading, one reading is `shared` by all, or the scale was `zeroed` with the empty container on it. Default: each, or shared when sharedTare is given.
    tare_reading: Optional[CatchTestRequest_tareReading] = None
    # The rate to be applied; gives the effect of a wrong value. No default. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # Smallest step of the run time. Default 0.5 s: default; judgement, no published source. Range: 0 to 60 s.
    time_resolution: Optional[TimeQuantity] = None
    # Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    tolerance: Optional[RatioQuantity] = None
    # Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    turn_resolution: Optional[RevolutionsQuantity] = None
    # The mass per revolution that the controller uses now: the number typed in. No default. Range: above 0 and up to 1000 kg/rev.
    value_in_force: Optional[ReferenceOfTest] = None
    # The value that was typed into the controller while it indicated a mass; default the value in force. Range: above 0 and up to 1000 kg/rev.
    value_typed_in: Optional[MassPerRevolutionQuantity] = None
    # Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %.
    wanted_precision: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchTestRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchTestRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchTestRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .catch_of_test import CatchOfTest
        from .catch_test_request_count_start import CatchTestRequest_countStart
        from .catch_test_request_ruled_out_mistakes import CatchTestRequest_ruledOutMistakes
        from .catch_test_request_tare_reading import CatchTestRequest_tareReading
        from .caught_points_of_test import CaughtPointsOfTest
        from .container_of_test import ContainerOfTest
        from .controller_entry_of_test import ControllerEntryOfTest
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .mass_quantity import MassQuantity
        from .other_container_of_test import OtherContainerOfTest
        from .other_delivery_of_test import OtherDeliveryOfTest
        from .product_of_test import ProductOfTest
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .reference_of_test import ReferenceOfTest
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_quantity import RotationQuantity
        from .scale_of_test import ScaleOfTest
        from .time_quantity import TimeQuantity

        from .area_quantity import AreaQuantity
        from .catch_of_test import CatchOfTest
        from .catch_test_request_count_start import CatchTestRequest_countStart
        from .catch_test_request_ruled_out_mistakes import CatchTestRequest_ruledOutMistakes
        from .catch_test_request_tare_reading import CatchTestRequest_tareReading
        from .caught_points_of_test import CaughtPointsOfTest
        from .container_of_test import ContainerOfTest
        from .controller_entry_of_test import ControllerEntryOfTest
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .mass_quantity import MassQuantity
        from .other_container_of_test import OtherContainerOfTest
        from .other_delivery_of_test import OtherDeliveryOfTest
        from .product_of_test import ProductOfTest
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .reference_of_test import ReferenceOfTest
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_quantity import RotationQuantity
        from .scale_of_test import ScaleOfTest
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "catchPoints": lambda n : setattr(self, 'catch_points', n.get_int_value()),
            "catches": lambda n : setattr(self, 'catches', n.get_collection_of_object_values(CatchOfTest)),
            "caughtPoints": lambda n : setattr(self, 'caught_points', n.get_object_value(CaughtPointsOfTest)),
            "container": lambda n : setattr(self, 'container', n.get_object_value(ContainerOfTest)),
            "controllerEntry": lambda n : setattr(self, 'controller_entry', n.get_object_value(ControllerEntryOfTest)),
            "countStart": lambda n : setattr(self, 'count_start', n.get_enum_value(CatchTestRequest_countStart)),
            "counterResolution": lambda n : setattr(self, 'counter_resolution', n.get_object_value(RevolutionsQuantity)),
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "dayToDay": lambda n : setattr(self, 'day_to_day', n.get_object_value(RatioQuantity)),
            "indicatedMassResolution": lambda n : setattr(self, 'indicated_mass_resolution', n.get_object_value(MassQuantity)),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "meterRevolutionsPerTurn": lambda n : setattr(self, 'meter_revolutions_per_turn', n.get_object_value(RatioQuantity)),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
            "newLot": lambda n : setattr(self, 'new_lot', n.get_bool_value()),
            "otherContainers": lambda n : setattr(self, 'other_containers', n.get_collection_of_object_values(OtherContainerOfTest)),
            "otherElements": lambda n : setattr(self, 'other_elements', n.get_collection_of_object_values(OtherDeliveryOfTest)),
            "otherProducts": lambda n : setattr(self, 'other_products', n.get_collection_of_object_values(OtherDeliveryOfTest)),
            "pocketsPerRevolution": lambda n : setattr(self, 'pockets_per_revolution', n.get_int_value()),
            "product": lambda n : setattr(self, 'product', n.get_object_value(ProductOfTest)),
            "pulsesPerRevolution": lambda n : setattr(self, 'pulses_per_revolution', n.get_object_value(PulsesPerRevolutionQuantity)),
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(RatioQuantity)),
            "repeatabilityDegreesOfFreedom": lambda n : setattr(self, 'repeatability_degrees_of_freedom', n.get_float_value()),
            "ruledOutMistakes": lambda n : setattr(self, 'ruled_out_mistakes', n.get_collection_of_enum_values(CatchTestRequest_ruledOutMistakes)),
            "scale": lambda n : setattr(self, 'scale', n.get_object_value(ScaleOfTest)),
            "secondCatchChange": lambda n : setattr(self, 'second_catch_change', n.get_object_value(RatioQuantity)),
            "sharedTare": lambda n : setattr(self, 'shared_tare', n.get_object_value(MassQuantity)),
            "startValue": lambda n : setattr(self, 'start_value', n.get_object_value(ReferenceOfTest)),
            "tareReading": lambda n : setattr(self, 'tare_reading', n.get_enum_value(CatchTestRequest_tareReading)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "timeResolution": lambda n : setattr(self, 'time_resolution', n.get_object_value(TimeQuantity)),
            "tolerance": lambda n : setattr(self, 'tolerance', n.get_object_value(RatioQuantity)),
            "turnResolution": lambda n : setattr(self, 'turn_resolution', n.get_object_value(RevolutionsQuantity)),
            "valueInForce": lambda n : setattr(self, 'value_in_force', n.get_object_value(ReferenceOfTest)),
            "valueTypedIn": lambda n : setattr(self, 'value_typed_in', n.get_object_value(MassPerRevolutionQuantity)),
            "wantedPrecision": lambda n : setattr(self, 'wanted_precision', n.get_object_value(RatioQuantity)),
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
        writer.write_int_value("catchPoints", self.catch_points)
        writer.write_collection_of_object_values("catches", self.catches)
        writer.write_object_value("caughtPoints", self.caught_points)
        writer.write_object_value("container", self.container)
        writer.write_object_value("controllerEntry", self.controller_entry)
        writer.write_enum_value("countStart", self.count_start)
        writer.write_object_value("counterResolution", self.counter_resolution)
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("dayToDay", self.day_to_day)
        writer.write_object_value("indicatedMassResolution", self.indicated_mass_resolution)
        writer.write_str_value("meter", self.meter)
        writer.write_object_value("meterRevolutionsPerTurn", self.meter_revolutions_per_turn)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_bool_value("newLot", self.new_lot)
        writer.write_collection_of_object_values("otherContainers", self.other_containers)
        writer.write_collection_of_object_values("otherElements", self.other_elements)
        writer.write_collection_of_object_values("otherProducts", self.other_products)
        writer.write_int_value("pocketsPerRevolution", self.pockets_per_revolution)
        writer.write_object_value("product", self.product)
        writer.write_object_value("pulsesPerRevolution", self.pulses_per_revolution)
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_float_value("repeatabilityDegreesOfFreedom", self.repeatability_degrees_of_freedom)
        writer.write_collection_of_enum_values("ruledOutMistakes", self.ruled_out_mistakes)
        writer.write_object_value("scale", self.scale)
        writer.write_object_value("secondCatchChange", self.second_catch_change)
        writer.write_object_value("sharedTare", self.shared_tare)
        writer.write_object_value("startValue", self.start_value)
        writer.write_enum_value("tareReading", self.tare_reading)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_object_value("timeResolution", self.time_resolution)
        writer.write_object_value("tolerance", self.tolerance)
        writer.write_object_value("turnResolution", self.turn_resolution)
        writer.write_object_value("valueInForce", self.value_in_force)
        writer.write_object_value("valueTypedIn", self.value_typed_in)
        writer.write_object_value("wantedPrecision", self.wanted_precision)
    


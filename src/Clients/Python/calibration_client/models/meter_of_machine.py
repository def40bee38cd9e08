from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .controller_entry_of_test import ControllerEntryOfTest
    from .element_of_machine import ElementOfMachine
    from .length_quantity import LengthQuantity
    from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .rotation_limits import RotationLimits

@dataclass
class MeterOfMachine(Parsable):
    """
    A meter at its place on the machine.
    """
    # The form in which its controller takes the value.
    controller_entry: Optional[ControllerEntryOfTest] = None
    # Smallest step of its revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev.
    counter_resolution: Optional[RevolutionsQuantity] = None
    # Width that it covers. Range: above 0 and up to 200 m.
    covered_width: Optional[LengthQuantity] = None
    # Metering elements it can be fitted with; names are unique within the meter.
    elements: Optional[list[ElementOfMachine]] = None
    # Meter revolutions per turn of the crank or wheel. No default. Range: 0.0001 to 10000.
    meter_revolutions_per_turn: Optional[RatioQuantity] = None
    # Outlets that it feeds. No default.
    outlets: Optional[int] = None
    # Where it is, in the owner's words, for example front; unique on the machine.
    position: Optional[str] = None
    # Sensor pulses per revolution. No default. Range: above 0 and up to 1000000 pulses/rev.
    pulses_per_revolution: Optional[PulsesPerRevolutionQuantity] = None
    # Limits of its speed, for elements that do not name their own.
    speed_limits: Optional[RotationLimits] = None
    # Name of the tank that feeds it.
    tank: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .controller_entry_of_test import ControllerEntryOfTest
        from .element_of_machine import ElementOfMachine
        from .length_quantity import LengthQuantity
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_limits import RotationLimits

        from .controller_entry_of_test import ControllerEntryOfTest
        from .element_of_machine import ElementOfMachine
        from .length_quantity import LengthQuantity
        from .pulses_per_revolution_quantity import PulsesPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .rotation_limits import RotationLimits

        fields: dict[str, Callable[[Any], None]] = {
            "controllerEntry": lambda n : setattr(self, 'controller_entry', n.get_object_value(ControllerEntryOfTest)),
            "counterResolution": lambda n : setattr(self, 'counter_resolution', n.get_object_value(RevolutionsQuantity)),
            "coveredWidth": lambda n : setattr(self, 'covered_width', n.get_object_value(LengthQuantity)),
            "elements": lambda n : setattr(self, 'elements', n.get_collection_of_object_values(ElementOfMachine)),
            "meterRevolutionsPerTurn": lambda n : setattr(self, 'meter_revolutions_per_turn', n.get_object_value(RatioQuantity)),
            "outlets": lambda n : setattr(self, 'outlets', n.get_int_value()),
            "position": lambda n : setattr(self, 'position', n.get_str_value()),
            "pulsesPerRevolution": lambda n : setattr(self, 'pulses_per_revolution', n.get_object_value(PulsesPerRevolutionQuantity)),
            "speedLimits": lambda n : setattr(self, 'speed_limits', n.get_object_value(RotationLimits)),
            "tank": lambda n : setattr(self, 'tank', n.get_str_value()),
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
        writer.write_object_value("controllerEntry", self.controller_entry)
        writer.write_object_value("counterResolution", self.counter_resolution)
        writer.write_object_value("coveredWidth", self.covered_width)
        writer.write_collection_of_object_values("elements", self.elements)
        writer.write_object_value("meterRevolutionsPerTurn", self.meter_revolutions_per_turn)
        writer.write_int_value("outlets", self.outlets)
        writer.write_str_value("position", self.position)
        writer.write_object_value("pulsesPerRevolution", self.pulses_per_revolution)
        writer.write_object_value("speedLimits", self.speed_limits)
        writer.write_str_value("tank", self.tank)
    


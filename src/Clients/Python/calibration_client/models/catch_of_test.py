from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .exclusion import Exclusion
    from .mass_quantity import MassQuantity
    from .revolutions_quantity import RevolutionsQuantity
    from .time_quantity import TimeQuantity

@dataclass
class CatchOfTest(Parsable):
    """
    One catch: what was weighed, as gross and tare (or the sharedTare of the test) or as net; and how far the meter turned, as exactly one of revolutions, pulses, turns, indicatedMass and runTime.
    """
    # Leaves the catch out of the evaluation but in the answer.
    excluded: Optional[Exclusion] = None
    # Mass with the container. No default. Range: above 0 and up to 1000 t.
    gross: Optional[MassQuantity] = None
    # Mass that the machine believes to have metered. No default. Range: above 0 and up to 1000 t.
    indicated_mass: Optional[MassQuantity] = None
    # Net mass, in place of gross and tare. No default. Range: above 0 and up to 1000 t.
    net: Optional[MassQuantity] = None
    # Sensor pulses, a plain count. No default.
    pulses: Optional[float] = None
    # Revolutions of the meter. No default. Range: above 0 and up to 1000000 rev.
    revolutions: Optional[RevolutionsQuantity] = None
    # Run time at the steady meter speed. No default. Range: above 0 and up to 24 h.
    run_time: Optional[TimeQuantity] = None
    # Mass of the empty container. No default. Range: 0 to 1000 t.
    tare: Optional[MassQuantity] = None
    # Turns of a crank or wheel. No default. Range: above 0 and up to 1000000 rev.
    turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .exclusion import Exclusion
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .time_quantity import TimeQuantity

        from .exclusion import Exclusion
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity
        from .time_quantity import TimeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "excluded": lambda n : setattr(self, 'excluded', n.get_object_value(Exclusion)),
            "gross": lambda n : setattr(self, 'gross', n.get_object_value(MassQuantity)),
            "indicatedMass": lambda n : setattr(self, 'indicated_mass', n.get_object_value(MassQuantity)),
            "net": lambda n : setattr(self, 'net', n.get_object_value(MassQuantity)),
            "pulses": lambda n : setattr(self, 'pulses', n.get_float_value()),
            "revolutions": lambda n : setattr(self, 'revolutions', n.get_object_value(RevolutionsQuantity)),
            "runTime": lambda n : setattr(self, 'run_time', n.get_object_value(TimeQuantity)),
            "tare": lambda n : setattr(self, 'tare', n.get_object_value(MassQuantity)),
            "turns": lambda n : setattr(self, 'turns', n.get_object_value(RevolutionsQuantity)),
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
        writer.write_object_value("excluded", self.excluded)
        writer.write_object_value("gross", self.gross)
        writer.write_object_value("indicatedMass", self.indicated_mass)
        writer.write_object_value("net", self.net)
        writer.write_float_value("pulses", self.pulses)
        writer.write_object_value("revolutions", self.revolutions)
        writer.write_object_value("runTime", self.run_time)
        writer.write_object_value("tare", self.tare)
        writer.write_object_value("turns", self.turns)
    


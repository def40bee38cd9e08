from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .ratio_quantity import RatioQuantity
    from .rolling_run import RollingRun

@dataclass
class DriveWheelOfMachine(Parsable):
    """
    A drive wheel: exactly one of circumference, measuredRun and diameter.
    """
    # Rolling circumference, measured under load on the ground. Default pi times the diameter, where that is given: judgement, a loaded tyre rolls shorter. Range: 0.1 to 30 m.
    circumference: Optional[LengthQuantity] = None
    # Diameter of the wheel; the circumference is then reckoned, and a finding warns of it. No default. Range: 0.03 to 10 m.
    diameter: Optional[LengthQuantity] = None
    # Distance and turns from which the rolling circumference follows.
    measured_run: Optional[RollingRun] = None
    # Standard uncertainty of the circumference, relative; 2 % where it is reckoned from the diameter. Default 0.5 %: measured on the ground; judgement, no published source. Range: 0 to 20 %.
    relative_uncertainty: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> DriveWheelOfMachine:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: DriveWheelOfMachine
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return DriveWheelOfMachine()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity
        from .rolling_run import RollingRun

        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity
        from .rolling_run import RollingRun

        fields: dict[str, Callable[[Any], None]] = {
            "circumference": lambda n : setattr(self, 'circumference', n.get_object_value(LengthQuantity)),
            "diameter": lambda n : setattr(self, 'diameter', n.get_object_value(LengthQuantity)),
            "measuredRun": lambda n : setattr(self, 'measured_run', n.get_object_value(RollingRun)),
            "relativeUncertainty": lambda n : setattr(self, 'relative_uncertainty', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("circumference", self.circumference)
        writer.write_object_value("diameter", self.diameter)
        writer.write_object_value("measuredRun", self.measured_run)
        writer.write_object_value("relativeUncertainty", self.relative_uncertainty)
    


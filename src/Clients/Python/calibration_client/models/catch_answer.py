from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .mass_quantity import MassQuantity
    from .revolutions_quantity import RevolutionsQuantity

@dataclass
class CatchAnswer(AdditionalDataHolder, Parsable):
    """
    One catch as evaluated.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Why the sender left it out; absent when it counts.
    excluded_because: Optional[str] = None
    # Mass per revolution of this catch alone.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # Mass metered: corrected for the known error of the scale and scaled to all points; absent when it equals the net mass.
    metered: Optional[MassQuantity] = None
    # Net mass as the scale showed it.
    net: Optional[MassQuantity] = None
    # Revolutions of the meter.
    revolutions: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "excludedBecause": lambda n : setattr(self, 'excluded_because', n.get_str_value()),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "metered": lambda n : setattr(self, 'metered', n.get_object_value(MassQuantity)),
            "net": lambda n : setattr(self, 'net', n.get_object_value(MassQuantity)),
            "revolutions": lambda n : setattr(self, 'revolutions', n.get_object_value(RevolutionsQuantity)),
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
        writer.write_str_value("excludedBecause", self.excluded_because)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("metered", self.metered)
        writer.write_object_value("net", self.net)
        writer.write_object_value("revolutions", self.revolutions)
        writer.write_additional_data_value(self.additional_data)
    


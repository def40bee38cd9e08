from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .revolutions_quantity import RevolutionsQuantity

@dataclass
class RollingRun(Parsable):
    """
    How far a wheel rolled in how many turns.
    """
    # Distance rolled. Range: 0.1 to 10000 m.
    distance: Optional[LengthQuantity] = None
    # Turns counted. Range: 0.1 to 100000 rev.
    turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RollingRun:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RollingRun
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RollingRun()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .revolutions_quantity import RevolutionsQuantity

        from .length_quantity import LengthQuantity
        from .revolutions_quantity import RevolutionsQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
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
        writer.write_object_value("distance", self.distance)
        writer.write_object_value("turns", self.turns)
    


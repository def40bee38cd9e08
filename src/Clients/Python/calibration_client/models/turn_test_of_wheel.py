from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .revolutions_quantity import RevolutionsQuantity

@dataclass
class TurnTestOfWheel(Parsable):
    """
    One turn test: turns, and what fell meanwhile, as exactly one of caught and perOutlet.
    """
    # Net mass from all outlets that were caught together. No default. Range: above 0 and up to 1000 t.
    caught: Optional[MassQuantity] = None
    # Net mass outlet by outlet; the outlets are then compared with their mean. Range: 0 to 1000 t.
    per_outlet: Optional[list[MassQuantity]] = None
    # Turns of the drive wheel. Range: 0.1 to 100000 rev.
    turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TurnTestOfWheel:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TurnTestOfWheel
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TurnTestOfWheel()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "caught": lambda n : setattr(self, 'caught', n.get_object_value(MassQuantity)),
            "perOutlet": lambda n : setattr(self, 'per_outlet', n.get_collection_of_object_values(MassQuantity)),
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
        writer.write_object_value("caught", self.caught)
        writer.write_collection_of_object_values("perOutlet", self.per_outlet)
        writer.write_object_value("turns", self.turns)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ground_of_count import GroundOfCount

@dataclass
class CountOfPlants(Parsable):
    """
    The plants of one spot.
    """
    # The ground of this count, where it differs from that of the others.
    ground: Optional[GroundOfCount] = None
    # Plants counted; none is a count too.
    plants: Optional[int] = None
    # The row or opener where it was counted, in the words of the counter; counts of one row say less.
    row: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CountOfPlants:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CountOfPlants
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CountOfPlants()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ground_of_count import GroundOfCount

        from .ground_of_count import GroundOfCount

        fields: dict[str, Callable[[Any], None]] = {
            "ground": lambda n : setattr(self, 'ground', n.get_object_value(GroundOfCount)),
            "plants": lambda n : setattr(self, 'plants', n.get_int_value()),
            "row": lambda n : setattr(self, 'row', n.get_str_value()),
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
        writer.write_object_value("ground", self.ground)
        writer.write_int_value("plants", self.plants)
        writer.write_str_value("row", self.row)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity

@dataclass
class SampleOfSeed(Parsable):
    """
    Seeds that were counted and weighed together.
    """
    # Their mass together. Range: above 0 and up to 1000 t.
    mass: Optional[MassQuantity] = None
    # Seeds counted.
    seeds: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SampleOfSeed:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SampleOfSeed
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SampleOfSeed()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity

        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
            "seeds": lambda n : setattr(self, 'seeds', n.get_int_value()),
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
        writer.write_object_value("mass", self.mass)
        writer.write_int_value("seeds", self.seeds)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity

@dataclass
class KnownMassReadingOfCheck(Parsable):
    """
    One reading of a known mass.
    """
    # What the scale showed. Range: 0 to 1000 t.
    indicated: Optional[MassQuantity] = None
    # The known mass. Range: above 0 and up to 1000 t.
    known: Optional[MassQuantity] = None
    # Standard uncertainty of the known mass. Default 0: judgement, known masses are far better than the scale. Range: 0 to 1000 kg.
    known_uncertainty: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> KnownMassReadingOfCheck:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: KnownMassReadingOfCheck
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return KnownMassReadingOfCheck()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity

        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "indicated": lambda n : setattr(self, 'indicated', n.get_object_value(MassQuantity)),
            "known": lambda n : setattr(self, 'known', n.get_object_value(MassQuantity)),
            "knownUncertainty": lambda n : setattr(self, 'known_uncertainty', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("indicated", self.indicated)
        writer.write_object_value("known", self.known)
        writer.write_object_value("knownUncertainty", self.known_uncertainty)
    


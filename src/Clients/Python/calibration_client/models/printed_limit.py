from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity

@dataclass
class PrintedLimit(AdditionalDataHolder, Parsable):
    """
    A number as a source prints it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The geometry that it is printed for.
    geometry: Optional[str] = None
    # The number, in the unit of the source.
    limit: Optional[MassPerAreaQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PrintedLimit:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PrintedLimit
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PrintedLimit()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity

        from .mass_per_area_quantity import MassPerAreaQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "geometry": lambda n : setattr(self, 'geometry', n.get_str_value()),
            "limit": lambda n : setattr(self, 'limit', n.get_object_value(MassPerAreaQuantity)),
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
        writer.write_str_value("geometry", self.geometry)
        writer.write_object_value("limit", self.limit)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .volume_quantity import VolumeQuantity

@dataclass
class ContainerRequest(Parsable):
    """
    A container for catches.
    """
    # Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published source. Range: 1 to 100 %.
    fill: Optional[RatioQuantity] = None
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    id: Optional[str] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # Mass of the empty container. Range: 0 to 10 t.
    tare: Optional[MassQuantity] = None
    # Volume. No default. Range: above 0 and up to 10 m3.
    volume: Optional[VolumeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ContainerRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ContainerRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ContainerRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        from .mass_quantity import MassQuantity
        from .ratio_quantity import RatioQuantity
        from .volume_quantity import VolumeQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "fill": lambda n : setattr(self, 'fill', n.get_object_value(RatioQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "tare": lambda n : setattr(self, 'tare', n.get_object_value(MassQuantity)),
            "volume": lambda n : setattr(self, 'volume', n.get_object_value(VolumeQuantity)),
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
        writer.write_object_value("fill", self.fill)
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_bool_value("retired", self.retired)
        writer.write_object_value("tare", self.tare)
        writer.write_object_value("volume", self.volume)
    


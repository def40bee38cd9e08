from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .ratio_quantity import RatioQuantity
    from .volume_quantity import VolumeQuantity

@dataclass
class ContainerAnswer(AdditionalDataHolder, Parsable):
    """
    A container as stored.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # When it was created (UTC).
    created_at: Optional[datetime.datetime] = None
    # Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published source.
    fill: Optional[RatioQuantity] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # 1 when created, one more with each change.
    revision: Optional[int] = None
    # Mass of the empty container.
    tare: Optional[MassQuantity] = None
    # When it was changed last (UTC).
    updated_at: Optional[datetime.datetime] = None
    # Volume.
    volume: Optional[VolumeQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ContainerAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ContainerAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ContainerAnswer()
    
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
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "fill": lambda n : setattr(self, 'fill', n.get_object_value(RatioQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "revision": lambda n : setattr(self, 'revision', n.get_int_value()),
            "tare": lambda n : setattr(self, 'tare', n.get_object_value(MassQuantity)),
            "updatedAt": lambda n : setattr(self, 'updated_at', n.get_datetime_value()),
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
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_object_value("fill", self.fill)
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_bool_value("retired", self.retired)
        writer.write_int_value("revision", self.revision)
        writer.write_object_value("tare", self.tare)
        writer.write_datetime_value("updatedAt", self.updated_at)
        writer.write_object_value("volume", self.volume)
        writer.write_additional_data_value(self.additional_data)
    


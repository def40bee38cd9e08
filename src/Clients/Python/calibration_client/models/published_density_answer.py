from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity

@dataclass
class PublishedDensityAnswer(AdditionalDataHolder, Parsable):
    """
    A published bulk density, in the unit in which it was printed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Highest printed value; the lowest where one value is printed.
    high: Optional[BulkDensityQuantity] = None
    # What the values are; a legal bushel weight is no measured density. Known today: `typical-range`, `measured-range`, `legal-bushel-weight`, `storage-factor`.
    kind: Optional[str] = None
    # Lowest printed value.
    low: Optional[BulkDensityQuantity] = None
    # The publication.
    source: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PublishedDensityAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PublishedDensityAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PublishedDensityAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity

        from .bulk_density_quantity import BulkDensityQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "high": lambda n : setattr(self, 'high', n.get_object_value(BulkDensityQuantity)),
            "kind": lambda n : setattr(self, 'kind', n.get_str_value()),
            "low": lambda n : setattr(self, 'low', n.get_object_value(BulkDensityQuantity)),
            "source": lambda n : setattr(self, 'source', n.get_str_value()),
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
        writer.write_object_value("high", self.high)
        writer.write_str_value("kind", self.kind)
        writer.write_object_value("low", self.low)
        writer.write_str_value("source", self.source)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .mass_quantity import MassQuantity

@dataclass
class WeighingAnswer(AdditionalDataHolder, Parsable):
    """
    One weighing.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Its bulk density.
    bulk_density: Optional[BulkDensityQuantity] = None
    # Net mass, a known error of the scale corrected.
    net: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WeighingAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WeighingAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WeighingAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_quantity import MassQuantity

        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(BulkDensityQuantity)),
            "net": lambda n : setattr(self, 'net', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_object_value("net", self.net)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class MoistureAnswer(AdditionalDataHolder, Parsable):
    """
    A published study of density against moisture.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What moisture is a share of: `dry` matter or the `wet` whole.
    basis: Optional[str] = None
    # Relative change of the density for each percentage point of moisture, on average.
    change_per_point: Optional[RatioQuantity] = None
    # Bulk density at the start.
    density_from: Optional[BulkDensityQuantity] = None
    # Bulk density at the end.
    density_to: Optional[BulkDensityQuantity] = None
    # Moisture at the start.
    from_: Optional[RatioQuantity] = None
    # The publication.
    source: Optional[str] = None
    # Moisture at the end.
    to: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MoistureAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MoistureAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MoistureAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .ratio_quantity import RatioQuantity

        from .bulk_density_quantity import BulkDensityQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "basis": lambda n : setattr(self, 'basis', n.get_str_value()),
            "changePerPoint": lambda n : setattr(self, 'change_per_point', n.get_object_value(RatioQuantity)),
            "densityFrom": lambda n : setattr(self, 'density_from', n.get_object_value(BulkDensityQuantity)),
            "densityTo": lambda n : setattr(self, 'density_to', n.get_object_value(BulkDensityQuantity)),
            "from": lambda n : setattr(self, 'from_', n.get_object_value(RatioQuantity)),
            "source": lambda n : setattr(self, 'source', n.get_str_value()),
            "to": lambda n : setattr(self, 'to', n.get_object_value(RatioQuantity)),
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
        writer.write_str_value("basis", self.basis)
        writer.write_object_value("changePerPoint", self.change_per_point)
        writer.write_object_value("densityFrom", self.density_from)
        writer.write_object_value("densityTo", self.density_to)
        writer.write_object_value("from", self.from_)
        writer.write_str_value("source", self.source)
        writer.write_object_value("to", self.to)
        writer.write_additional_data_value(self.additional_data)
    


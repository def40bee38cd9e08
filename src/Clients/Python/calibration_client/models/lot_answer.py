from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class LotAnswer(AdditionalDataHolder, Parsable):
    """
    A lot as stored.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Bulk density; goes before that of the product.
    bulk_density: Optional[BulkDensityQuantity] = None
    # When it was created (UTC).
    created_at: Optional[datetime.datetime] = None
    # Germination.
    germination: Optional[RatioQuantity] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # Moisture by mass.
    moisture: Optional[RatioQuantity] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # Id of the product.
    product: Optional[str] = None
    # Purity.
    purity: Optional[RatioQuantity] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # 1 when created, one more with each change.
    revision: Optional[int] = None
    # Thousand-kernel mass as sown, treatment included.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    # Treatment, in the owner's words; none when absent.
    treatment: Optional[str] = None
    # When it was changed last (UTC).
    updated_at: Optional[datetime.datetime] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LotAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LotAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LotAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        from .bulk_density_quantity import BulkDensityQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(BulkDensityQuantity)),
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "moisture": lambda n : setattr(self, 'moisture', n.get_object_value(RatioQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "revision": lambda n : setattr(self, 'revision', n.get_int_value()),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
            "treatment": lambda n : setattr(self, 'treatment', n.get_str_value()),
            "updatedAt": lambda n : setattr(self, 'updated_at', n.get_datetime_value()),
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
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_object_value("germination", self.germination)
        writer.write_str_value("id", self.id)
        writer.write_object_value("moisture", self.moisture)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_str_value("product", self.product)
        writer.write_object_value("purity", self.purity)
        writer.write_bool_value("retired", self.retired)
        writer.write_int_value("revision", self.revision)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
        writer.write_str_value("treatment", self.treatment)
        writer.write_datetime_value("updatedAt", self.updated_at)
        writer.write_additional_data_value(self.additional_data)
    


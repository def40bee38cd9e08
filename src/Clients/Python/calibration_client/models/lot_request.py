from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class LotRequest(Parsable):
    """
    A lot of a product: a delivery, a seed lot, a treatment of its own.
    """
    # Bulk density; goes before that of the product. No default. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[BulkDensityQuantity] = None
    # Germination. No default. Range: above 0 and up to 100 %.
    germination: Optional[RatioQuantity] = None
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    id: Optional[str] = None
    # Moisture by mass. No default. Range: 0 to 100 %.
    moisture: Optional[RatioQuantity] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # Id of the product.
    product: Optional[str] = None
    # Purity. No default. Range: above 0 and up to 100 %.
    purity: Optional[RatioQuantity] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # Thousand-kernel mass as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    # Treatment, in the owner's words; none when absent.
    treatment: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LotRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LotRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LotRequest()
    
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
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "moisture": lambda n : setattr(self, 'moisture', n.get_object_value(RatioQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
            "treatment": lambda n : setattr(self, 'treatment', n.get_str_value()),
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
        writer.write_object_value("germination", self.germination)
        writer.write_str_value("id", self.id)
        writer.write_object_value("moisture", self.moisture)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_str_value("product", self.product)
        writer.write_object_value("purity", self.purity)
        writer.write_bool_value("retired", self.retired)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
        writer.write_str_value("treatment", self.treatment)
    


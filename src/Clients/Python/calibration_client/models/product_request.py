from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .price import Price
    from .product_request_material import ProductRequest_material
    from .product_request_nitrogen_form import ProductRequest_nitrogenForm
    from .rotation_limits import RotationLimits
    from .share_of_nutrient import ShareOfNutrient

@dataclass
class ProductRequest(Parsable):
    """
    A product that meters put down.
    """
    # Its nutrients, each as a share of its mass in a stated form; for a fertilizer.
    analysis: Optional[list[ShareOfNutrient]] = None
    # Usual bulk density; a lot may have its own. No default. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[BulkDensityQuantity] = None
    # Fan speeds that the product may have on this machine; yours, from the machine's manual.
    fan_speed_limits: Optional[RotationLimits] = None
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    id: Optional[str] = None
    # How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking).
    material: Optional[ProductRequest_material] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea.
    nitrogen_form: Optional[ProductRequest_nitrogenForm] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # Price.
    price: Optional[Price] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .price import Price
        from .product_request_material import ProductRequest_material
        from .product_request_nitrogen_form import ProductRequest_nitrogenForm
        from .rotation_limits import RotationLimits
        from .share_of_nutrient import ShareOfNutrient

        from .bulk_density_quantity import BulkDensityQuantity
        from .price import Price
        from .product_request_material import ProductRequest_material
        from .product_request_nitrogen_form import ProductRequest_nitrogenForm
        from .rotation_limits import RotationLimits
        from .share_of_nutrient import ShareOfNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "analysis": lambda n : setattr(self, 'analysis', n.get_collection_of_object_values(ShareOfNutrient)),
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(BulkDensityQuantity)),
            "fanSpeedLimits": lambda n : setattr(self, 'fan_speed_limits', n.get_object_value(RotationLimits)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "material": lambda n : setattr(self, 'material', n.get_enum_value(ProductRequest_material)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "nitrogenForm": lambda n : setattr(self, 'nitrogen_form', n.get_enum_value(ProductRequest_nitrogenForm)),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
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
        writer.write_collection_of_object_values("analysis", self.analysis)
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_object_value("fanSpeedLimits", self.fan_speed_limits)
        writer.write_str_value("id", self.id)
        writer.write_enum_value("material", self.material)
        writer.write_str_value("name", self.name)
        writer.write_enum_value("nitrogenForm", self.nitrogen_form)
        writer.write_str_value("note", self.note)
        writer.write_object_value("price", self.price)
        writer.write_bool_value("retired", self.retired)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .price import Price
    from .product_of_test_material import ProductOfTest_material

@dataclass
class ProductOfTest(Parsable):
    """
    The product of a catch test.
    """
    # Bulk density; needed when the controller takes a volume per revolution. No default. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[BulkDensityQuantity] = None
    # How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking).
    material: Optional[ProductOfTest_material] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Price; gives the cost of a wrong value.
    price: Optional[Price] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProductOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProductOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProductOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .price import Price
        from .product_of_test_material import ProductOfTest_material

        from .bulk_density_quantity import BulkDensityQuantity
        from .price import Price
        from .product_of_test_material import ProductOfTest_material

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(BulkDensityQuantity)),
            "material": lambda n : setattr(self, 'material', n.get_enum_value(ProductOfTest_material)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
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
        writer.write_enum_value("material", self.material)
        writer.write_str_value("name", self.name)
        writer.write_object_value("price", self.price)
    


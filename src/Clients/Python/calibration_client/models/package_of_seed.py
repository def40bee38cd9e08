from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .package_price import PackagePrice

@dataclass
class PackageOfSeed(Parsable):
    """
    A bag or box of seed: of a mass or of a count of pure seeds, exactly one of the two.
    """
    # Mass of the seed in one package. No default. Range: above 0 and up to 1000 t.
    mass: Optional[MassQuantity] = None
    # Price of one package.
    price: Optional[PackagePrice] = None
    # Pure seeds in one package. No default.
    seeds: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PackageOfSeed:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PackageOfSeed
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PackageOfSeed()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .package_price import PackagePrice

        from .mass_quantity import MassQuantity
        from .package_price import PackagePrice

        fields: dict[str, Callable[[Any], None]] = {
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(PackagePrice)),
            "seeds": lambda n : setattr(self, 'seeds', n.get_float_value()),
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
        writer.write_object_value("mass", self.mass)
        writer.write_object_value("price", self.price)
        writer.write_float_value("seeds", self.seeds)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .mass_quantity import MassQuantity

@dataclass
class PackagesAnswer(AdditionalDataHolder, Parsable):
    """
    Seed in packages.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area that one package sows.
    area_per_package: Optional[AreaQuantity] = None
    # What stays in the last package.
    left_over: Optional[MassQuantity] = None
    # Mass of one package.
    mass: Optional[MassQuantity] = None
    # Packages that the area takes, not rounded; absent without an area.
    needed: Optional[float] = None
    # The same rounded up to whole packages.
    whole: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PackagesAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PackagesAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PackagesAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .mass_quantity import MassQuantity

        from .area_quantity import AreaQuantity
        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "areaPerPackage": lambda n : setattr(self, 'area_per_package', n.get_object_value(AreaQuantity)),
            "leftOver": lambda n : setattr(self, 'left_over', n.get_object_value(MassQuantity)),
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
            "needed": lambda n : setattr(self, 'needed', n.get_float_value()),
            "whole": lambda n : setattr(self, 'whole', n.get_float_value()),
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
        writer.write_object_value("areaPerPackage", self.area_per_package)
        writer.write_object_value("leftOver", self.left_over)
        writer.write_object_value("mass", self.mass)
        writer.write_float_value("needed", self.needed)
        writer.write_float_value("whole", self.whole)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity
    from .share_of_nutrient_nutrient import ShareOfNutrient_nutrient

@dataclass
class ShareOfNutrient(Parsable):
    """
    A nutrient as a share of a product.
    """
    # The nutrient in the form that the share is stated in.
    nutrient: Optional[ShareOfNutrient_nutrient] = None
    # Its share of the mass of the product. Range: 0 to 250 %.
    share: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ShareOfNutrient:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ShareOfNutrient
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ShareOfNutrient()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity
        from .share_of_nutrient_nutrient import ShareOfNutrient_nutrient

        from .ratio_quantity import RatioQuantity
        from .share_of_nutrient_nutrient import ShareOfNutrient_nutrient

        fields: dict[str, Callable[[Any], None]] = {
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_enum_value(ShareOfNutrient_nutrient)),
            "share": lambda n : setattr(self, 'share', n.get_object_value(RatioQuantity)),
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
        writer.write_enum_value("nutrient", self.nutrient)
        writer.write_object_value("share", self.share)
    


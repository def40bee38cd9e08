from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class BlendShare(AdditionalDataHolder, Parsable):
    """
    Share of a nutrient in a blend.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The nutrient in the form that the share is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
    nutrient: Optional[str] = None
    # The share of the mass.
    share: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> BlendShare:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: BlendShare
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return BlendShare()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_str_value()),
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
        writer.write_str_value("nutrient", self.nutrient)
        writer.write_object_value("share", self.share)
        writer.write_additional_data_value(self.additional_data)
    


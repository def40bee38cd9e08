from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class WidthAnswer(AdditionalDataHolder, Parsable):
    """
    The width of a machine.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Width that each pass covers anew.
    effective: Optional[LengthQuantity] = None
    # Width that the controller reckons with.
    in_force: Optional[LengthQuantity] = None
    # Openers times spacing.
    nominal: Optional[LengthQuantity] = None
    # Nominal less effective width: positive where passes overlap, negative where strips are left.
    overlap: Optional[LengthQuantity] = None
    # Overlap as a share of the width covered anew: product that a field takes beyond its area.
    overlap_share: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> WidthAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: WidthAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return WidthAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity

        from .length_quantity import LengthQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "effective": lambda n : setattr(self, 'effective', n.get_object_value(LengthQuantity)),
            "inForce": lambda n : setattr(self, 'in_force', n.get_object_value(LengthQuantity)),
            "nominal": lambda n : setattr(self, 'nominal', n.get_object_value(LengthQuantity)),
            "overlap": lambda n : setattr(self, 'overlap', n.get_object_value(LengthQuantity)),
            "overlapShare": lambda n : setattr(self, 'overlap_share', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("effective", self.effective)
        writer.write_object_value("inForce", self.in_force)
        writer.write_object_value("nominal", self.nominal)
        writer.write_object_value("overlap", self.overlap)
        writer.write_object_value("overlapShare", self.overlap_share)
        writer.write_additional_data_value(self.additional_data)
    


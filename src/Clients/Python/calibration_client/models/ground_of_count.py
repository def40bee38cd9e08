from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .length_quantity import LengthQuantity

@dataclass
class GroundOfCount(Parsable):
    """
    The ground of a count, in one of four forms: rowLength with rowSpacing, length with width, area, or hoopDiameter.
    """
    # Area of a frame. No default. Range: 0.001 to 100000 m2.
    area: Optional[AreaQuantity] = None
    # What the frame or hoop is called, for example a quarter of a square metre; it is checked and not computed with. No default. Range: 0.001 to 100000 m2.
    called_area: Optional[AreaQuantity] = None
    # Inside diameter of a hoop. No default. Range: 0.01 to 10 m.
    hoop_diameter: Optional[LengthQuantity] = None
    # One side of a frame. No default. Range: 0.01 to 1000 m.
    length: Optional[LengthQuantity] = None
    # Length counted along each row. No default. Range: 0.01 to 1000 m.
    row_length: Optional[LengthQuantity] = None
    # Distance from row to row; goes with rowLength. No default. Range: 0.01 to 10 m.
    row_spacing: Optional[LengthQuantity] = None
    # Rows counted side by side. Default 1: common practice.
    rows: Optional[int] = None
    # The other side of it. No default. Range: 0.01 to 1000 m.
    width: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> GroundOfCount:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: GroundOfCount
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return GroundOfCount()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity

        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "calledArea": lambda n : setattr(self, 'called_area', n.get_object_value(AreaQuantity)),
            "hoopDiameter": lambda n : setattr(self, 'hoop_diameter', n.get_object_value(LengthQuantity)),
            "length": lambda n : setattr(self, 'length', n.get_object_value(LengthQuantity)),
            "rowLength": lambda n : setattr(self, 'row_length', n.get_object_value(LengthQuantity)),
            "rowSpacing": lambda n : setattr(self, 'row_spacing', n.get_object_value(LengthQuantity)),
            "rows": lambda n : setattr(self, 'rows', n.get_int_value()),
            "width": lambda n : setattr(self, 'width', n.get_object_value(LengthQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_object_value("calledArea", self.called_area)
        writer.write_object_value("hoopDiameter", self.hoop_diameter)
        writer.write_object_value("length", self.length)
        writer.write_object_value("rowLength", self.row_length)
        writer.write_object_value("rowSpacing", self.row_spacing)
        writer.write_int_value("rows", self.rows)
        writer.write_object_value("width", self.width)
    


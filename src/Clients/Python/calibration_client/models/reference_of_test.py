from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity
    from .reference_of_test_unit import ReferenceOfTest_unit

@dataclass
class ReferenceOfTest(Parsable):
    """
    A mass per revolution to compare with.
    """
    # True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the change. Default false.
    from_another_scale: Optional[bool] = None
    # Its own standard uncertainty, relative, where known. Default in a catch test none: it is taken as exact. Default in a catch plan 2 % for a value in force and 10 % for a start value: judgement, no published source. Range: 0 to 100 %.
    relative_uncertainty: Optional[RatioQuantity] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[ReferenceOfTest_unit] = None
    # The number, in the unit beside it. No default.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ReferenceOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ReferenceOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ReferenceOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity
        from .reference_of_test_unit import ReferenceOfTest_unit

        from .ratio_quantity import RatioQuantity
        from .reference_of_test_unit import ReferenceOfTest_unit

        fields: dict[str, Callable[[Any], None]] = {
            "fromAnotherScale": lambda n : setattr(self, 'from_another_scale', n.get_bool_value()),
            "relativeUncertainty": lambda n : setattr(self, 'relative_uncertainty', n.get_object_value(RatioQuantity)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(ReferenceOfTest_unit)),
            "value": lambda n : setattr(self, 'value', n.get_float_value()),
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
        writer.write_bool_value("fromAnotherScale", self.from_another_scale)
        writer.write_object_value("relativeUncertainty", self.relative_uncertainty)
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
    


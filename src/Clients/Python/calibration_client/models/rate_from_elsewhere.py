from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rate_from_elsewhere_made_by import RateFromElsewhere_madeBy
    from .rate_from_elsewhere_unit import RateFromElsewhere_unit

@dataclass
class RateFromElsewhere(Parsable):
    """
    A rate from a table, a label or a sum on paper.
    """
    # How it was made, where known: `divide-by-ten` is the trade's shortcut for lb/ac (plants per square foot times grams per thousand over survival over 10), `exact-units` has no such shortcut in it. Left out, a rate in lb/ac is judged by how far it is off.
    made_by: Optional[RateFromElsewhere_madeBy] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[RateFromElsewhere_unit] = None
    # The number, in the unit beside it. No default.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> RateFromElsewhere:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: RateFromElsewhere
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return RateFromElsewhere()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rate_from_elsewhere_made_by import RateFromElsewhere_madeBy
        from .rate_from_elsewhere_unit import RateFromElsewhere_unit

        from .rate_from_elsewhere_made_by import RateFromElsewhere_madeBy
        from .rate_from_elsewhere_unit import RateFromElsewhere_unit

        fields: dict[str, Callable[[Any], None]] = {
            "madeBy": lambda n : setattr(self, 'made_by', n.get_enum_value(RateFromElsewhere_madeBy)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(RateFromElsewhere_unit)),
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
        writer.write_enum_value("madeBy", self.made_by)
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
    


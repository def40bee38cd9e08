from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .factor_answer import FactorAnswer

@dataclass
class UnitAnswer(AdditionalDataHolder, Parsable):
    """
    One unit.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Unit code of the AgGateway ADAPT standard.
    adapt: Optional[str] = None
    # What it measures, as the schemas of quantities are named: `mass` for MassQuantity.
    dimension: Optional[str] = None
    # What a reader must know, for example which acre is meant.
    note: Optional[str] = None
    # What is added after the factor: the SI value of zero in this unit, in kelvin for a temperature. Absent for zero, which every other unit has.
    offset_in_si: Optional[float] = None
    # The symbol as payloads write it; case counts.
    symbol: Optional[str] = None
    # Exact factor: a value in this unit times the factor, plus `offsetInSi` where there is one, is the value in the SI unit of the dimension (kg, m, s, Pa, K, revolutions as a plain count).
    to_si: Optional[FactorAnswer] = None
    # Code in the Unified Code for Units of Measure.
    ucum: Optional[str] = None
    # Common code of UN/ECE Recommendation 20.
    united_nations: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> UnitAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: UnitAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return UnitAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .factor_answer import FactorAnswer

        from .factor_answer import FactorAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "adapt": lambda n : setattr(self, 'adapt', n.get_str_value()),
            "dimension": lambda n : setattr(self, 'dimension', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "offsetInSi": lambda n : setattr(self, 'offset_in_si', n.get_float_value()),
            "symbol": lambda n : setattr(self, 'symbol', n.get_str_value()),
            "toSi": lambda n : setattr(self, 'to_si', n.get_object_value(FactorAnswer)),
            "ucum": lambda n : setattr(self, 'ucum', n.get_str_value()),
            "unitedNations": lambda n : setattr(self, 'united_nations', n.get_str_value()),
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
        writer.write_str_value("adapt", self.adapt)
        writer.write_str_value("dimension", self.dimension)
        writer.write_str_value("note", self.note)
        writer.write_float_value("offsetInSi", self.offset_in_si)
        writer.write_str_value("symbol", self.symbol)
        writer.write_object_value("toSi", self.to_si)
        writer.write_str_value("ucum", self.ucum)
        writer.write_str_value("unitedNations", self.united_nations)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .measured_length_unit import MeasuredLength_unit

@dataclass
class MeasuredLength(AdditionalDataHolder, Parsable):
    """
    A measured length with its uncertainty.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Factor by which the standard uncertainty was expanded.
    coverage_factor: Optional[float] = None
    # Probability that the interval covers the true value.
    coverage_probability: Optional[float] = None
    # Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
    degrees_of_freedom: Optional[float] = None
    # Half width of the coverage interval, in the unit beside it.
    expanded_uncertainty: Optional[float] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[MeasuredLength_unit] = None
    # The number, in the unit beside it.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeasuredLength:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeasuredLength
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeasuredLength()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .measured_length_unit import MeasuredLength_unit

        from .measured_length_unit import MeasuredLength_unit

        fields: dict[str, Callable[[Any], None]] = {
            "coverageFactor": lambda n : setattr(self, 'coverage_factor', n.get_float_value()),
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "degreesOfFreedom": lambda n : setattr(self, 'degrees_of_freedom', n.get_float_value()),
            "expandedUncertainty": lambda n : setattr(self, 'expanded_uncertainty', n.get_float_value()),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(MeasuredLength_unit)),
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
        writer.write_float_value("coverageFactor", self.coverage_factor)
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_float_value("degreesOfFreedom", self.degrees_of_freedom)
        writer.write_float_value("expandedUncertainty", self.expanded_uncertainty)
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


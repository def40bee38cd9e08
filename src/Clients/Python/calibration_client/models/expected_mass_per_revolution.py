from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .expected_mass_per_revolution_unit import ExpectedMassPerRevolution_unit
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class ExpectedMassPerRevolution(AdditionalDataHolder, Parsable):
    """
    An expected mass per revolution. As likely too low as too high, with an interval that is longer upwards.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Probability of the interval.
    coverage_probability: Optional[float] = None
    # Lower end of the coverage interval.
    lower: Optional[MassPerRevolutionQuantity] = None
    # Standard deviation of the natural logarithm: the relative standard uncertainty.
    spread: Optional[RatioQuantity] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[ExpectedMassPerRevolution_unit] = None
    # Upper end of the coverage interval.
    upper: Optional[MassPerRevolutionQuantity] = None
    # The number, in the unit beside it.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ExpectedMassPerRevolution:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ExpectedMassPerRevolution
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ExpectedMassPerRevolution()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .expected_mass_per_revolution_unit import ExpectedMassPerRevolution_unit
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity

        from .expected_mass_per_revolution_unit import ExpectedMassPerRevolution_unit
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "lower": lambda n : setattr(self, 'lower', n.get_object_value(MassPerRevolutionQuantity)),
            "spread": lambda n : setattr(self, 'spread', n.get_object_value(RatioQuantity)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(ExpectedMassPerRevolution_unit)),
            "upper": lambda n : setattr(self, 'upper', n.get_object_value(MassPerRevolutionQuantity)),
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
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("lower", self.lower)
        writer.write_object_value("spread", self.spread)
        writer.write_enum_value("unit", self.unit)
        writer.write_object_value("upper", self.upper)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


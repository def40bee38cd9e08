from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class EntryAnswer(AdditionalDataHolder, Parsable):
    """
    A number for the controller.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The form in which the controller takes it. Known today: `mass-per-revolution`, `mass-per-ten-revolutions`, `mass-per-pulse`, `volume-per-revolution`, `mass-per-time`.
    form: Optional[str] = None
    # The mass per revolution that the controller then uses: the value in force once typed in.
    resulting_mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # Relative error that the rounding causes.
    rounding_error: Optional[RatioQuantity] = None
    # Its unit.
    unit: Optional[str] = None
    # The number to type in, already rounded to the controller's decimals.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> EntryAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: EntryAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return EntryAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity

        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "form": lambda n : setattr(self, 'form', n.get_str_value()),
            "resultingMassPerRevolution": lambda n : setattr(self, 'resulting_mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "roundingError": lambda n : setattr(self, 'rounding_error', n.get_object_value(RatioQuantity)),
            "unit": lambda n : setattr(self, 'unit', n.get_str_value()),
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
        writer.write_str_value("form", self.form)
        writer.write_object_value("resultingMassPerRevolution", self.resulting_mass_per_revolution)
        writer.write_object_value("roundingError", self.rounding_error)
        writer.write_str_value("unit", self.unit)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    


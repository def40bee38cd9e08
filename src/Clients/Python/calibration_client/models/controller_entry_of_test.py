from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .controller_entry_of_test_form import ControllerEntryOfTest_form
    from .controller_entry_of_test_unit import ControllerEntryOfTest_unit

@dataclass
class ControllerEntryOfTest(Parsable):
    """
    How a controller takes the value.
    """
    # Decimals that the controller takes.
    decimals: Optional[int] = None
    # The form: mass-per-revolution, mass-per-ten-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time.
    form: Optional[ControllerEntryOfTest_form] = None
    # Unit of the number: one of mass per revolution; of mass for ten revolutions or a pulse; of volume; or of mass per time, as the form asks.
    unit: Optional[ControllerEntryOfTest_unit] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ControllerEntryOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ControllerEntryOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ControllerEntryOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .controller_entry_of_test_form import ControllerEntryOfTest_form
        from .controller_entry_of_test_unit import ControllerEntryOfTest_unit

        from .controller_entry_of_test_form import ControllerEntryOfTest_form
        from .controller_entry_of_test_unit import ControllerEntryOfTest_unit

        fields: dict[str, Callable[[Any], None]] = {
            "decimals": lambda n : setattr(self, 'decimals', n.get_int_value()),
            "form": lambda n : setattr(self, 'form', n.get_enum_value(ControllerEntryOfTest_form)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(ControllerEntryOfTest_unit)),
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
        writer.write_int_value("decimals", self.decimals)
        writer.write_enum_value("form", self.form)
        writer.write_enum_value("unit", self.unit)
    


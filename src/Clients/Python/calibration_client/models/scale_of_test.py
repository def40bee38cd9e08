from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .known_scale_error_of_test import KnownScaleErrorOfTest
    from .mass_quantity import MassQuantity
    from .scale_of_test_accuracy_class import ScaleOfTest_accuracyClass

@dataclass
class ScaleOfTest(Parsable):
    """
    A scale.
    """
    # Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.
    accuracy_class: Optional[ScaleOfTest_accuracyClass] = None
    # Largest load, container included. No default. Range: above 0 and up to 1000 t.
    capacity: Optional[MassQuantity] = None
    # Smallest step of the display. Range: above 0 and up to 100 kg.
    division: Optional[MassQuantity] = None
    # Span error found by a check against known masses: it is corrected, and only its uncertainty remains.
    known_error: Optional[KnownScaleErrorOfTest] = None
    # Standard deviation of a reading of a load that swings or creeps, beyond the division. No default. Range: 0 to 100 kg.
    reading_scatter: Optional[MassQuantity] = None
    # Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg.
    stated_accuracy: Optional[MassQuantity] = None
    # Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76). Range: above 0 and up to 100 kg.
    verification_interval: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleOfTest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleOfTest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleOfTest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .known_scale_error_of_test import KnownScaleErrorOfTest
        from .mass_quantity import MassQuantity
        from .scale_of_test_accuracy_class import ScaleOfTest_accuracyClass

        from .known_scale_error_of_test import KnownScaleErrorOfTest
        from .mass_quantity import MassQuantity
        from .scale_of_test_accuracy_class import ScaleOfTest_accuracyClass

        fields: dict[str, Callable[[Any], None]] = {
            "accuracyClass": lambda n : setattr(self, 'accuracy_class', n.get_enum_value(ScaleOfTest_accuracyClass)),
            "capacity": lambda n : setattr(self, 'capacity', n.get_object_value(MassQuantity)),
            "division": lambda n : setattr(self, 'division', n.get_object_value(MassQuantity)),
            "knownError": lambda n : setattr(self, 'known_error', n.get_object_value(KnownScaleErrorOfTest)),
            "readingScatter": lambda n : setattr(self, 'reading_scatter', n.get_object_value(MassQuantity)),
            "statedAccuracy": lambda n : setattr(self, 'stated_accuracy', n.get_object_value(MassQuantity)),
            "verificationInterval": lambda n : setattr(self, 'verification_interval', n.get_object_value(MassQuantity)),
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
        writer.write_enum_value("accuracyClass", self.accuracy_class)
        writer.write_object_value("capacity", self.capacity)
        writer.write_object_value("division", self.division)
        writer.write_object_value("knownError", self.known_error)
        writer.write_object_value("readingScatter", self.reading_scatter)
        writer.write_object_value("statedAccuracy", self.stated_accuracy)
        writer.write_object_value("verificationInterval", self.verification_interval)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .checked_answer import CheckedAnswer
    from .expected_mass_per_revolution import ExpectedMassPerRevolution
    from .expected_ratio import ExpectedRatio
    from .finding_answer import FindingAnswer
    from .reference_of_test import ReferenceOfTest
    from .spread_part import SpreadPart

@dataclass
class VolumeCheckAnswer(AdditionalDataHolder, Parsable):
    """
    What an element should deliver, and how a value compares with it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # How the checked value compares; absent without one.
    checked: Optional[CheckedAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # Expected mass per revolution: displacement times bulk density times fill efficiency.
    expected: Optional[ExpectedMassPerRevolution] = None
    # Fill efficiency behind it.
    fill_efficiency: Optional[ExpectedRatio] = None
    # What was noticed. There is no verdict: no element was tested here.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # Parts of the spread of the expected value.
    spread_parts: Optional[list[SpreadPart]] = None
    # The expected value as the start value of a catch plan takes it.
    start_value: Optional[ReferenceOfTest] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> VolumeCheckAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: VolumeCheckAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return VolumeCheckAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .checked_answer import CheckedAnswer
        from .expected_mass_per_revolution import ExpectedMassPerRevolution
        from .expected_ratio import ExpectedRatio
        from .finding_answer import FindingAnswer
        from .reference_of_test import ReferenceOfTest
        from .spread_part import SpreadPart

        from .assumption_answer import AssumptionAnswer
        from .checked_answer import CheckedAnswer
        from .expected_mass_per_revolution import ExpectedMassPerRevolution
        from .expected_ratio import ExpectedRatio
        from .finding_answer import FindingAnswer
        from .reference_of_test import ReferenceOfTest
        from .spread_part import SpreadPart

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "checked": lambda n : setattr(self, 'checked', n.get_object_value(CheckedAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "expected": lambda n : setattr(self, 'expected', n.get_object_value(ExpectedMassPerRevolution)),
            "fillEfficiency": lambda n : setattr(self, 'fill_efficiency', n.get_object_value(ExpectedRatio)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "spreadParts": lambda n : setattr(self, 'spread_parts', n.get_collection_of_object_values(SpreadPart)),
            "startValue": lambda n : setattr(self, 'start_value', n.get_object_value(ReferenceOfTest)),
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
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_object_value("checked", self.checked)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("expected", self.expected)
        writer.write_object_value("fillEfficiency", self.fill_efficiency)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("spreadParts", self.spread_parts)
        writer.write_object_value("startValue", self.start_value)
        writer.write_additional_data_value(self.additional_data)
    


from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .bulk_density_quantity import BulkDensityQuantity
    from .caution_answer import CautionAnswer
    from .density_uncertainty_part import DensityUncertaintyPart
    from .finding_answer import FindingAnswer
    from .measured_bulk_density import MeasuredBulkDensity
    from .reference_answer import ReferenceAnswer
    from .tank_answer import TankAnswer
    from .weighing_answer import WeighingAnswer

@dataclass
class BulkDensityAnswer(AdditionalDataHolder, Parsable):
    """
    A bulk density with its interval, beside what is published.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What it is known from. Known today: `weighed`, `filled-tank`, `test-weight`, `stated`, `published`.
    basis: Optional[str] = None
    # The bulk density with its uncertainty.
    bulk_density: Optional[MeasuredBulkDensity] = None
    # What can hurt somebody on the way.
    cautions: Optional[list[CautionAnswer]] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # The same density in every unit.
    in_other_units: Optional[list[BulkDensityQuantity]] = None
    # The density of the same grain poured loosely, if the test weight is an official Canadian one, which allows for settling; absent where that does not apply.
    loose_density: Optional[BulkDensityQuantity] = None
    # What is published for the material; absent when none was named.
    reference: Optional[ReferenceAnswer] = None
    # What the tank holds; absent when none was named.
    tank: Optional[TankAnswer] = None
    # Parts of the relative standard uncertainty.
    uncertainty_parts: Optional[list[DensityUncertaintyPart]] = None
    # Each weighing; absent where nothing was weighed.
    weighings: Optional[list[WeighingAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> BulkDensityAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: BulkDensityAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return BulkDensityAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .bulk_density_quantity import BulkDensityQuantity
        from .caution_answer import CautionAnswer
        from .density_uncertainty_part import DensityUncertaintyPart
        from .finding_answer import FindingAnswer
        from .measured_bulk_density import MeasuredBulkDensity
        from .reference_answer import ReferenceAnswer
        from .tank_answer import TankAnswer
        from .weighing_answer import WeighingAnswer

        from .assumption_answer import AssumptionAnswer
        from .bulk_density_quantity import BulkDensityQuantity
        from .caution_answer import CautionAnswer
        from .density_uncertainty_part import DensityUncertaintyPart
        from .finding_answer import FindingAnswer
        from .measured_bulk_density import MeasuredBulkDensity
        from .reference_answer import ReferenceAnswer
        from .tank_answer import TankAnswer
        from .weighing_answer import WeighingAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "basis": lambda n : setattr(self, 'basis', n.get_str_value()),
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(MeasuredBulkDensity)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "inOtherUnits": lambda n : setattr(self, 'in_other_units', n.get_collection_of_object_values(BulkDensityQuantity)),
            "looseDensity": lambda n : setattr(self, 'loose_density', n.get_object_value(BulkDensityQuantity)),
            "reference": lambda n : setattr(self, 'reference', n.get_object_value(ReferenceAnswer)),
            "tank": lambda n : setattr(self, 'tank', n.get_object_value(TankAnswer)),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(DensityUncertaintyPart)),
            "weighings": lambda n : setattr(self, 'weighings', n.get_collection_of_object_values(WeighingAnswer)),
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
        writer.write_str_value("basis", self.basis)
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("inOtherUnits", self.in_other_units)
        writer.write_object_value("looseDensity", self.loose_density)
        writer.write_object_value("reference", self.reference)
        writer.write_object_value("tank", self.tank)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_collection_of_object_values("weighings", self.weighings)
        writer.write_additional_data_value(self.additional_data)
    


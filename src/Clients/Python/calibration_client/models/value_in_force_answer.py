from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .any_quantity import AnyQuantity
    from .conditions import Conditions
    from .finding_answer import FindingAnswer
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .measured_mass_per_revolution import MeasuredMassPerRevolution
    from .supersedes import Supersedes

@dataclass
class ValueInForceAnswer(AdditionalDataHolder, Parsable):
    """
    A value in force: the number in the controller, since when, and under which conditions it was found.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Id of the adoption.
    adoption: Optional[str] = None
    # The test that superseded the one it rests on: adopt its value.
    basis_superseded_by: Optional[Supersedes] = None
    # Conditions of that test, as entered.
    conditions: Optional[Conditions] = None
    # Metering element.
    element: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # Id of the lot that it was found with.
    lot: Optional[str] = None
    # Id of the machine.
    machine: Optional[str] = None
    # The mass per revolution that the controller uses.
    mass_per_revolution: Optional[MassPerRevolutionQuantity] = None
    # What that test measured.
    measured: Optional[MeasuredMassPerRevolution] = None
    # Position of the meter.
    meter: Optional[str] = None
    # Id of the product.
    product: Optional[str] = None
    # Who adopted it.
    recorded_by: Optional[str] = None
    # Setting of the meter; absent for none.
    setting: Optional[str] = None
    # Since when, with the offset it was entered with.
    since: Optional[datetime.datetime] = None
    # The date of that in the machine's time zone.
    since_local_date: Optional[datetime.date] = None
    # Id of the test that it rests on; absent when stated by hand.
    test: Optional[str] = None
    # Treatment of that lot.
    treatment: Optional[str] = None
    # The number typed in.
    typed_in: Optional[AnyQuantity] = None
    # Why.
    why: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ValueInForceAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ValueInForceAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ValueInForceAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .any_quantity import AnyQuantity
        from .conditions import Conditions
        from .finding_answer import FindingAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .supersedes import Supersedes

        from .any_quantity import AnyQuantity
        from .conditions import Conditions
        from .finding_answer import FindingAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .supersedes import Supersedes

        fields: dict[str, Callable[[Any], None]] = {
            "adoption": lambda n : setattr(self, 'adoption', n.get_str_value()),
            "basisSupersededBy": lambda n : setattr(self, 'basis_superseded_by', n.get_object_value(Supersedes)),
            "conditions": lambda n : setattr(self, 'conditions', n.get_object_value(Conditions)),
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "lot": lambda n : setattr(self, 'lot', n.get_str_value()),
            "machine": lambda n : setattr(self, 'machine', n.get_str_value()),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionQuantity)),
            "measured": lambda n : setattr(self, 'measured', n.get_object_value(MeasuredMassPerRevolution)),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "recordedBy": lambda n : setattr(self, 'recorded_by', n.get_str_value()),
            "setting": lambda n : setattr(self, 'setting', n.get_str_value()),
            "since": lambda n : setattr(self, 'since', n.get_datetime_value()),
            "sinceLocalDate": lambda n : setattr(self, 'since_local_date', n.get_date_value()),
            "test": lambda n : setattr(self, 'test', n.get_str_value()),
            "treatment": lambda n : setattr(self, 'treatment', n.get_str_value()),
            "typedIn": lambda n : setattr(self, 'typed_in', n.get_object_value(AnyQuantity)),
            "why": lambda n : setattr(self, 'why', n.get_str_value()),
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
        writer.write_str_value("adoption", self.adoption)
        writer.write_object_value("basisSupersededBy", self.basis_superseded_by)
        writer.write_object_value("conditions", self.conditions)
        writer.write_str_value("element", self.element)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("lot", self.lot)
        writer.write_str_value("machine", self.machine)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("measured", self.measured)
        writer.write_str_value("meter", self.meter)
        writer.write_str_value("product", self.product)
        writer.write_str_value("recordedBy", self.recorded_by)
        writer.write_str_value("setting", self.setting)
        writer.write_datetime_value("since", self.since)
        writer.write_date_value("sinceLocalDate", self.since_local_date)
        writer.write_str_value("test", self.test)
        writer.write_str_value("treatment", self.treatment)
        writer.write_object_value("typedIn", self.typed_in)
        writer.write_str_value("why", self.why)
        writer.write_additional_data_value(self.additional_data)
    


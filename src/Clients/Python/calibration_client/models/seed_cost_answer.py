from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .cost_per_unit import CostPerUnit
    from .money import Money

@dataclass
class SeedCostAnswer(AdditionalDataHolder, Parsable):
    """
    What the seed costs.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Cost of the packages rounded up; absent without an area or a package.
    in_whole_packages: Optional[Money] = None
    # Cost of the seed that the area takes; absent without an area.
    over_area: Optional[Money] = None
    # Cost per area.
    per_area: Optional[CostPerUnit] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedCostAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedCostAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedCostAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .cost_per_unit import CostPerUnit
        from .money import Money

        from .cost_per_unit import CostPerUnit
        from .money import Money

        fields: dict[str, Callable[[Any], None]] = {
            "inWholePackages": lambda n : setattr(self, 'in_whole_packages', n.get_object_value(Money)),
            "overArea": lambda n : setattr(self, 'over_area', n.get_object_value(Money)),
            "perArea": lambda n : setattr(self, 'per_area', n.get_object_value(CostPerUnit)),
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
        writer.write_object_value("inWholePackages", self.in_whole_packages)
        writer.write_object_value("overArea", self.over_area)
        writer.write_object_value("perArea", self.per_area)
        writer.write_additional_data_value(self.additional_data)
    


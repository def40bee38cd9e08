from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .local_limit_with_seed import LocalLimitWithSeed
    from .seed_row_of_plan_crop import SeedRowOfPlan_crop
    from .seed_row_of_plan_moisture import SeedRowOfPlan_moisture
    from .seed_row_of_plan_region import SeedRowOfPlan_region
    from .seed_row_of_plan_soil import SeedRowOfPlan_soil

@dataclass
class SeedRowOfPlan(Parsable):
    """
    What decides how much may be placed with the seed on a field; row spacing and opener are those of the machine.
    """
    # The crop.
    crop: Optional[SeedRowOfPlan_crop] = None
    # Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones.
    local_limits: Optional[list[LocalLimitWithSeed]] = None
    # Moisture of the seedbed; in doubt `dry`.
    moisture: Optional[SeedRowOfPlan_moisture] = None
    # Where the field lies; without it limits of all regions are shown.
    region: Optional[SeedRowOfPlan_region] = None
    # Texture of the soil; the lightest one of the field.
    soil: Optional[SeedRowOfPlan_soil] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedRowOfPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedRowOfPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedRowOfPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .local_limit_with_seed import LocalLimitWithSeed
        from .seed_row_of_plan_crop import SeedRowOfPlan_crop
        from .seed_row_of_plan_moisture import SeedRowOfPlan_moisture
        from .seed_row_of_plan_region import SeedRowOfPlan_region
        from .seed_row_of_plan_soil import SeedRowOfPlan_soil

        from .local_limit_with_seed import LocalLimitWithSeed
        from .seed_row_of_plan_crop import SeedRowOfPlan_crop
        from .seed_row_of_plan_moisture import SeedRowOfPlan_moisture
        from .seed_row_of_plan_region import SeedRowOfPlan_region
        from .seed_row_of_plan_soil import SeedRowOfPlan_soil

        fields: dict[str, Callable[[Any], None]] = {
            "crop": lambda n : setattr(self, 'crop', n.get_enum_value(SeedRowOfPlan_crop)),
            "localLimits": lambda n : setattr(self, 'local_limits', n.get_collection_of_object_values(LocalLimitWithSeed)),
            "moisture": lambda n : setattr(self, 'moisture', n.get_enum_value(SeedRowOfPlan_moisture)),
            "region": lambda n : setattr(self, 'region', n.get_enum_value(SeedRowOfPlan_region)),
            "soil": lambda n : setattr(self, 'soil', n.get_enum_value(SeedRowOfPlan_soil)),
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
        writer.write_enum_value("crop", self.crop)
        writer.write_collection_of_object_values("localLimits", self.local_limits)
        writer.write_enum_value("moisture", self.moisture)
        writer.write_enum_value("region", self.region)
        writer.write_enum_value("soil", self.soil)
    

